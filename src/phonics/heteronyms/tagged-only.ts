// What is a verb by the tags of the other words: joined to one, an order, or the only one of its clause.

import { isTold } from './clause.ts'
import { hasObject } from './clue.ts'
import { isEdge, isMark, isName } from './place.ts'
import { GAPS, hasTag, hasVerbAfter, isJoin, isNoun, isPlural, isVerbWord, type TaggedClue } from './tags.ts'
import { DESCRIBING, LEADING, needsObject } from './valency.ts'
import { isPast } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** `can recruit or recall them`, `to sing and record it`, `they sing and record songs`. */
export const joinedVerb: TaggedClue = (place, tags, inflected) => {
  const [lead, join] = [place.words[place.index - 3], place.words[place.index - 1]]
  if (inflected || !isJoin(join) || !hasTag(tags, place.index - 2, 'Verb')) return undefined
  if (lead === 'to' || has(is.MODALS, lead)) return ['verb']
  // `Store and transport it with care`
  const isOrder = place.index === 2 && hasTag(tags, 0, 'Infinitive') && !hasVerbAfter(place, tags)
  if (isOrder) return ['verb']
  return has(is.PLURAL_SUBJECTS, lead) ? ['verb', 'past'] : undefined
}

/** `Estimate distances.`, an order: no other verb stands in its clause. */
export const bareOrder: TaggedClue = ({ words, index }, tags, inflected) => {
  const opens = index === 0 || has(is.STOPS, words[index - 1])
  if (
    inflected ||
    !opens ||
    has(DESCRIBING, words[index]) ||
    has(LEADING, words[index]) ||
    !hasTag(tags, index + 1, 'Noun')
  )
    return undefined
  for (let at = index + 2; !isMark(words[at]); at++) if (isVerbWord(words, tags, at)) return undefined
  return ['verb']
}

/** Takes a thing, and leads none: `and produce air`, `and use tools`. */
const takesThing = (word: string): boolean =>
  word === 'use' || word === 'produce' || (needsObject(word) && !LEADING.has(word))

/** `Trees give shade and produce oxygen`: joined to a bare verb, and before a bare thing. */
export const joinedToVerb: TaggedClue = ({ words, index }, tags, inflected) => {
  const word = words[index] ?? ''
  if (inflected || !isJoin(words[index - 1]) || !takesThing(word)) return undefined
  if (!isNoun(tags, index + 1) && !hasTag(tags, index + 1, 'Adjective')) return undefined
  for (let at = index - 2; !isMark(words[at]); at--) if (hasTag(tags, at, 'Infinitive')) return ['verb']
  return undefined
}

/** `Reduce, reuse and recycle!`: one of several orders. */
export const listedVerb: TaggedClue = ({ words, index }, tags, inflected) => {
  const isListed = !inflected && words[index - 1] === ',' && isJoin(words[index + 1])
  return isListed && hasTag(tags, index - 2, 'Infinitive') && hasTag(tags, index + 2, 'Infinitive')
    ? ['verb']
    : undefined
}

/** `That makes prices increase`, `Cold makes metal contract.` */
export const madeTo: TaggedClue = ({ words, index }, tags, inflected) => {
  const isMade = !inflected && isNoun(tags, index - 1) && /^(?:mak(?:es?|ing)|made)$/.test(words[index - 2] ?? '')
  return isMade && hasTag(tags, index, 'Verb') ? ['verb'] : undefined
}

/** `Do those games addict people?`: the helper that asks has no other verb. */
export const askedVerb: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  let at = index - 1
  while (at >= 0 && !isMark(words[at]) && !has(is.MODALS, words[at])) at--
  const lead = words.slice(0, Math.max(0, at))
  const asks = lead.length === 0 || lead.some((word) => has(is.QUESTIONS, word) || word === 'which')
  const isAsked = has(is.MODALS, words[at]) && (isMark(words[at - 1]) || asks)
  if (inflected || !isAsked || at > index - 2 || isTold(place)) return undefined
  for (let i = at + 1; !isMark(words[i]); i++) if (i !== index && hasTag(tags, i, 'Verb')) return undefined
  return ['verb']
}

/** `Water use went up`, `Refuse lay in heaps`: a verb comes right behind, and one thing or nothing before. */
export const subjectOfPast: TaggedClue = ({ words, index }, tags, inflected) => {
  const isFirst = index === 0 || (index === 1 && hasTag(tags, 0, 'Noun') && hasTag(tags, 0, 'Singular'))
  const after = words[index + 1]
  return !inflected && isFirst && isPast(after) && !/ed$/.test(after ?? '') ? ['noun'] : undefined
}

/** `Our puppy graduates from it today`: no other verb stands in the sentence, and one thing or person opens it. */
export const onlyVerb: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  if (!inflected || !isNoun(tags, index - 1) || hasTag(tags, index - 1, 'Plural') || isEdge(words[index + 1]))
    return undefined
  const before = words.slice(0, index - 1)
  const opens = before.every((word) => has(is.DETERMINERS, word) || has(is.ADJECTIVES, word) || has(is.ADVERBS, word))
  return opens && !hasVerbAfter(place, tags) ? ['verb'] : undefined
}

const CONDITIONS: ReadonlySet<string> = new Set(['after', 'as', 'before', 'if', 'once', 'when', 'while'])

/** `When you have done this, progress to the next one.`: an order behind a condition. */
export const orderBehind: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  const isBehind = !inflected && words[index - 1] === ',' && has(CONDITIONS, words[0]) && !isEdge(words[index + 1])
  return isBehind && !hasVerbAfter(place, tags) ? ['verb'] : undefined
}

/** `Fish and creatures in the sea also produce their own lights`: no verb stands before, many do, and it has an object. */
export const onlyVerbOfMany: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  if (inflected || !hasObject(place) || words[index + 1] === 'that') return undefined
  let many = false
  for (let at = index - 1; !isMark(words[at]); at--) {
    if (isVerbWord(words, tags, at) || has(GAPS, words[at])) return undefined
    many ||= isPlural(tags, at, words[at] ?? '')
  }
  return many ? ['verb', 'past'] : undefined
}

/** `Mum and Dad alternate: first she, then he`: nothing before it in its clause is a verb, and nobody describes behind a thing. */
export const onlyBareVerb: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  // `The Egg and Spoon Contest` is a title
  const isTitle = isName(place, index) && has(LEADING, words[index])
  if (inflected || isTitle || !isNoun(tags, index - 1) || !isEdge(words[index + 1])) return undefined
  let joined = false
  for (let at = index - 1; !isMark(words[at]); at--) {
    if (isVerbWord(words, tags, at) || has(is.PREPOSITIONS, words[at])) return undefined
    joined ||= words[at] === 'and'
  }
  return joined ? ['verb', 'past'] : undefined
}
