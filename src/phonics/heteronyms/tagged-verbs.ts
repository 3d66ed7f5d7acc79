// What the tagger's verbs round a look-alike say: what a verb has just taken is its object, and what is joined to a verb is one.

import { hasEarlierHelper, isTold } from './clause.ts'
import { hasObject, isClosing } from './clue.ts'
import type { Classes } from './evidence.ts'
import { isEdge, isMark, type Place } from './place.ts'
import { DESCRIBING, LEADING, needsObject } from './valency.ts'
import { isPast, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

type Tags = readonly ReadonlySet<string>[]
type Clue = (place: Place, tags: Tags, inflected: boolean) => Classes | undefined

const tagAt = (tags: Tags, at: number, tag: string): boolean => tags[at]?.has(tag) === true
const isNoun = (tags: Tags, at: number): boolean => tagAt(tags, at, 'Noun') && !tagAt(tags, at, 'Pronoun')
const isJoin = (word: string | undefined): boolean => word === 'and' || word === 'or'

/** `Did you bring presents?`, `where Meg exchanges insults with him`: no verb in -s stands behind a verb. */
export const objectPlural: Clue = (place, tags, inflected) => {
  const { words, index } = place
  if (!inflected || hasObject(place) || !isVerbAt(place, tags, index - 1)) return undefined
  if (index > 1 && !isMark(words[index - 2])) return ['noun']
  return isEdge(words[index + 1]) || has(is.PREPOSITIONS, words[index + 1]) ? ['noun'] : undefined
}

/** `We do art projects`, `Magnets pull metal objects`. */
export const ledObjectPlural: Clue = (place, tags, inflected) => {
  const { words, index } = place
  const isLed = tagAt(tags, index - 1, 'Singular') || tagAt(tags, index - 1, 'Adjective')
  if (!inflected || !isLed || hasObject(place) || !isVerbAt(place, tags, index - 2)) return undefined
  const subject = words[index - 3]
  const isGoverned = subject === 'to' || has(is.MODALS, subject) || has(is.SUBJECTS, subject)
  return isGoverned || tagAt(tags, index - 3, 'Plural') ? ['noun'] : undefined
}

/** A verb by its tag, and by what stands before it: no `the` and no describing word. */
function isVerbAt({ words }: Place, tags: Tags, at: number): boolean {
  const lead = words[at - 1]
  const isLed = has(is.DETERMINERS, lead) || has(is.PLURAL_DETERMINERS, lead) || /.'s$/.test(lead ?? '')
  const isHelper = has(is.MODALS, words[at]) && !(/^d(?:o|id)$/.test(words[at] ?? '') && has(is.SUBJECTS, lead))
  if (isLed || tagAt(tags, at - 1, 'Adjective') || isHelper) return false
  return tagAt(tags, at, 'Verb') && !['Copula', 'Particle', 'Auxiliary'].some((tag) => tagAt(tags, at, tag))
}

/** `can recruit or recall them`, `to sing and record it`, `they sing and record songs`. */
export const joinedVerb: Clue = (place, tags, inflected) => {
  const [lead, join] = [place.words[place.index - 3], place.words[place.index - 1]]
  if (inflected || !isJoin(join) || !tagAt(tags, place.index - 2, 'Verb')) return undefined
  if (lead === 'to' || has(is.MODALS, lead)) return ['verb']
  // `Store and transport it with care`
  const isOrder = place.index === 2 && tagAt(tags, 0, 'Infinitive') && !hasVerbAfter(place, tags)
  if (isOrder) return ['verb']
  return has(is.PLURAL_SUBJECTS, lead) ? ['verb', 'past'] : undefined
}

/** `There were members present to help`, `any email address as a name`: what needs an object has none, and nothing asks or tells which. */
export const needing: Clue = ({ words, index }, tags, inflected) => {
  const [word = '', before = '', after] = [words[index], words[index - 1], words[index + 1]]
  const isAfterThing = isNoun(tags, index - 1) && (word === 'present' || !isPlural(tags, index - 1, before))
  if (inflected || !needsObject(word) || !(isClosing(after) || after === 'to' || after === 'as')) return undefined
  let isDone = false
  for (let at = index - 1; !isMark(words[at]); at--) {
    if (has(GAPS, words[at])) return undefined
    isDone ||= isVerbal(words[at]) || tagAt(tags, at, 'Verb')
  }
  // `Tom and Anna present to the class`
  const isPair = words[index - 2] === 'and' && !isDone
  return !isPair && isAfterThing ? ['noun', 'adjective'] : undefined
}

/** Behind these an object may be missing: `the play that the school will present at once`. */
const GAPS: ReadonlySet<string> = new Set('as how than that to what where which who whom whose'.split(' '))
const isPlural = (tags: Tags, at: number, word: string): boolean => tagAt(tags, at, 'Plural') || is.PLURALS.has(word)

/** `Estimate distances.`, an order: no other verb stands in its clause. */
export const bareOrder: Clue = ({ words, index }, tags, inflected) => {
  const opens = index === 0 || has(is.STOPS, words[index - 1])
  if (
    inflected ||
    !opens ||
    has(DESCRIBING, words[index]) ||
    has(LEADING, words[index]) ||
    !tagAt(tags, index + 1, 'Noun')
  )
    return undefined
  for (let at = index + 2; !isMark(words[at]); at++)
    if (tagAt(tags, at, 'Verb') || isVerbal(words[at])) return undefined
  return ['verb']
}

/** `Trees give shade and produce oxygen`: joined to a bare verb, and before a bare thing. */
export const joinedToVerb: Clue = ({ words, index }, tags, inflected) => {
  const word = words[index] ?? ''
  if (inflected || !isJoin(words[index - 1]) || !needsObject(word) || (word !== 'produce' && LEADING.has(word)))
    return undefined
  if (!isNoun(tags, index + 1) && !tagAt(tags, index + 1, 'Adjective')) return undefined
  for (let at = index - 2; !isMark(words[at]); at--) if (tagAt(tags, at, 'Infinitive')) return ['verb']
  return undefined
}

/** `Reduce, reuse and recycle!`: one of several orders. */
export const listedVerb: Clue = ({ words, index }, tags, inflected) => {
  const isListed = !inflected && words[index - 1] === ',' && isJoin(words[index + 1])
  return isListed && tagAt(tags, index - 2, 'Infinitive') && tagAt(tags, index + 2, 'Infinitive') ? ['verb'] : undefined
}

/** `That makes prices increase`, `Cold makes metal contract.` */
export const madeTo: Clue = ({ words, index }, tags, inflected) => {
  const isMade = !inflected && isNoun(tags, index - 1) && /^(?:mak(?:es?|ing)|made)$/.test(words[index - 2] ?? '')
  return isMade && tagAt(tags, index, 'Verb') ? ['verb'] : undefined
}

/** `Do those games addict people?`: the helper that asks has no other verb. */
export const askedVerb: Clue = (place, tags, inflected) => {
  const { words, index } = place
  let at = index - 1
  while (at >= 0 && !isMark(words[at]) && !has(is.MODALS, words[at])) at--
  const lead = words.slice(0, Math.max(0, at))
  const asks = lead.length === 0 || lead.some((word) => has(is.QUESTIONS, word) || word === 'which')
  const isAsked = has(is.MODALS, words[at]) && (isMark(words[at - 1]) || asks)
  if (inflected || !isAsked || at > index - 2 || isTold(place)) return undefined
  for (let i = at + 1; !isMark(words[i]); i++) if (i !== index && tagAt(tags, i, 'Verb')) return undefined
  return ['verb']
}

/** `Water use went up`, `Refuse lay in heaps`: a verb comes right behind, and one thing or nothing before. */
export const subjectOfPast: Clue = ({ words, index }, tags, inflected) => {
  const isFirst = index === 0 || (index === 1 && tagAt(tags, 0, 'Noun') && tagAt(tags, 0, 'Singular'))
  const after = words[index + 1]
  return !inflected && isFirst && isPast(after) && !/ed$/.test(after ?? '') ? ['noun'] : undefined
}

/** `Our puppy graduates from it today`: no other verb stands in the sentence, and one thing or person opens it. */
export const onlyVerb: Clue = (place, tags, inflected) => {
  const { words, index } = place
  if (!inflected || !isNoun(tags, index - 1) || tagAt(tags, index - 1, 'Plural') || isEdge(words[index + 1]))
    return undefined
  const before = words.slice(0, index - 1)
  const opens = before.every((word) => has(is.DETERMINERS, word) || has(is.ADJECTIVES, word) || has(is.ADVERBS, word))
  return opens && !hasVerbAfter(place, tags) ? ['verb'] : undefined
}

/** A verb behind the place, in the clause. */
function hasVerbAfter({ words, index }: Place, tags: Tags): boolean {
  for (let at = index + 1; !isMark(words[at]) && !has(is.CLAUSE_JOINS, words[at]); at++)
    if (tagAt(tags, at, 'Verb') || isVerbal(words[at])) return true
  return false
}

const CONDITIONS: ReadonlySet<string> = new Set(['after', 'as', 'before', 'if', 'once', 'when', 'while'])

/** `When you have done this, progress to the next one.`: an order behind a condition. */
export const orderBehind: Clue = (place, tags, inflected) => {
  const { words, index } = place
  const isBehind = !inflected && words[index - 1] === ',' && has(CONDITIONS, words[0]) && !isEdge(words[index + 1])
  return isBehind && !hasVerbAfter(place, tags) ? ['verb'] : undefined
}

/** `Fish and creatures in the sea also produce their own lights`: no verb stands before, many do, and it has an object. */
export const onlyVerbOfMany: Clue = (place, tags, inflected) => {
  const { words, index } = place
  if (inflected || !hasObject(place) || words[index + 1] === 'that') return undefined
  let many = false
  for (let at = index - 1; !isMark(words[at]); at--) {
    if (tagAt(tags, at, 'Verb') || isVerbal(words[at]) || has(GAPS, words[at])) return undefined
    many ||= isPlural(tags, at, words[at] ?? '')
  }
  return many ? ['verb', 'past'] : undefined
}

/** `Mum and Dad alternate: first she, then he`: nothing before it in its clause is a verb, and nobody describes behind a thing. */
export const onlyBareVerb: Clue = ({ words, index }, tags, inflected) => {
  if (inflected || !isNoun(tags, index - 1) || !isEdge(words[index + 1])) return undefined
  let at = index - 1
  let joined = false
  for (; !isMark(words[at]); at--) {
    if (tagAt(tags, at, 'Verb') || isVerbal(words[at]) || has(is.PREPOSITIONS, words[at])) return undefined
    joined ||= words[at] === 'and'
  }
  return joined || tagAt(tags, index - 1, 'Plural') ? ['verb', 'past'] : undefined
}

/** Behind these a clause may stand with no `that`: `I know my mother objects`. */
const OF_THOUGHT: ReadonlySet<string> = is.words(
  'believe believes bet feel feels guess hear hears hope hopes know knows mean means say says see sees suppose think thinks wish',
)

/** `We pinned our space projects up`: what a verb has taken does nothing. */
export const takenPlural: Clue = (place, tags, inflected) => {
  const { words, index } = place
  let at = index - 1
  while (at > index - 4 && (isNoun(tags, at) || tagAt(tags, at, 'Adjective')) && !has(is.DETERMINERS, words[at])) at--
  const verb = words[at - 1]
  const isLed = at < index - 1 && (has(is.DETERMINERS, words[at]) || has(is.PLURAL_DETERMINERS, words[at]))
  if (!inflected || !isLed || hasObject(place) || has(OF_THOUGHT, verb)) return undefined
  return isVerbAt(place, tags, at - 1) ? ['noun'] : undefined
}

/** `The shop sells soap and perfume.`: what needs an object has none, and no helper governs it. */
export const joinedThing: Clue = (place, tags, inflected) => {
  const { words, index } = place
  const isJoined = isJoin(words[index - 1]) && isNoun(tags, index - 2) && isEdge(words[index + 1])
  return !inflected && isJoined && needsObject(words[index] ?? '') && !hasEarlierHelper(place) ? ['noun'] : undefined
}

/** `open that present`: behind a verb. */
export const pointedAt: Clue = ({ words, index }, tags, inflected) =>
  !inflected && words[index - 1] === 'that' && tagAt(tags, index - 2, 'Verb') ? ['noun', 'adjective'] : undefined
