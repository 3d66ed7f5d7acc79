// What the tagger's verbs round a look-alike say: what a verb has just taken is its object, and what is joined to a verb is one.

import { hasObject } from './clue.ts'
import type { Classes } from './evidence.ts'
import { isEdge, isMark, type Place } from './place.ts'
import { needsObject } from './valency.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

type Tags = readonly ReadonlySet<string>[]
type Clue = (place: Place, tags: Tags, inflected: boolean) => Classes | undefined

const tagAt = (tags: Tags, at: number, tag: string): boolean => tags[at]?.has(tag) === true
const isNoun = (tags: Tags, at: number): boolean => tagAt(tags, at, 'Noun') && !tagAt(tags, at, 'Pronoun')
const isJoin = (word: string | undefined): boolean => word === 'and' || word === 'or'

/** What may lead another thing as well, so that `and record shops` is none: `combat`, `transport`. */
const LEADING: ReadonlySet<string> = new Set('combat contest discount survey transfer transport'.split(' '))

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

/** `can recruit or recall them`, `to sing and record it`. */
export const joinedVerb: Clue = (place, tags, inflected) => {
  const [lead, , join] = place.words.slice(Math.max(0, place.index - 3), place.index)
  const isJoined = isJoin(join) && tagAt(tags, place.index - 2, 'Verb')
  return !inflected && isJoined && (lead === 'to' || has(is.MODALS, lead)) ? ['verb'] : undefined
}

/** `Trees give shade and produce oxygen`: joined to a bare verb, and before a bare thing. */
export const joinedToVerb: Clue = ({ words, index }, tags, inflected) => {
  const word = words[index] ?? ''
  if (inflected || !isJoin(words[index - 1]) || !needsObject(word) || LEADING.has(word)) return undefined
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
