// What a verb by its tag has taken is a thing.

import { hasEarlierHelper } from './clause.ts'
import { hasObject, isClosing } from './clue.ts'
import { isEdge, isMark, type Place } from './place.ts'
import { GAPS, hasTag, isJoin, isNoun, isPlural, isVerbWord, type TaggedClue, type Tags } from './tags.ts'
import { needsObject } from './valency.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** `Did you bring presents?`, `where Meg exchanges insults with him`: no verb in -s stands behind a verb. */
export const objectPlural: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  if (!inflected || hasObject(place) || !isVerbAt(place, tags, index - 1)) return undefined
  if (index > 1 && !isMark(words[index - 2])) return ['noun']
  return isEdge(words[index + 1]) || has(is.PREPOSITIONS, words[index + 1]) ? ['noun'] : undefined
}

/** `We do art projects`, `Magnets pull metal objects`. */
export const ledObjectPlural: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  const isLed = hasTag(tags, index - 1, 'Singular') || hasTag(tags, index - 1, 'Adjective')
  if (!inflected || !isLed || hasObject(place) || !isVerbAt(place, tags, index - 2)) return undefined
  const subject = words[index - 3]
  const isGoverned = subject === 'to' || has(is.MODALS, subject) || has(is.SUBJECTS, subject)
  return isGoverned || hasTag(tags, index - 3, 'Plural') ? ['noun'] : undefined
}

/** A verb by its tag, and by what stands before it: no `the` and no describing word. */
function isVerbAt({ words }: Place, tags: Tags, at: number): boolean {
  const lead = words[at - 1]
  const isLed = has(is.DETERMINERS, lead) || has(is.PLURAL_DETERMINERS, lead) || /.'s$/.test(lead ?? '')
  const isHelper = has(is.MODALS, words[at]) && !(/^d(?:o|id)$/.test(words[at] ?? '') && has(is.SUBJECTS, lead))
  if (isLed || hasTag(tags, at - 1, 'Adjective') || isHelper) return false
  return hasTag(tags, at, 'Verb') && !['Copula', 'Particle', 'Auxiliary'].some((tag) => hasTag(tags, at, tag))
}

/** Behind these a clause may stand with no `that`: `I know my mother objects`. */
const OF_THOUGHT: ReadonlySet<string> = is.words(
  'believe believes bet feel feels guess hear hears hope hopes know knows mean means say says see sees suppose think thinks wish',
)

/** `We pinned our space projects up`: what a verb has taken does nothing. */
export const takenPlural: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  let at = index - 1
  while (at > index - 4 && (isNoun(tags, at) || hasTag(tags, at, 'Adjective')) && !has(is.DETERMINERS, words[at])) at--
  const verb = words[at - 1]
  const isLed = at < index - 1 && (has(is.DETERMINERS, words[at]) || has(is.PLURAL_DETERMINERS, words[at]))
  if (!inflected || !isLed || hasObject(place) || has(OF_THOUGHT, verb)) return undefined
  return isVerbAt(place, tags, at - 1) ? ['noun'] : undefined
}

/** `There were members present to help`, `any email address as a name`: what needs an object has none, and nothing asks or tells which. */
export const needing: TaggedClue = ({ words, index }, tags, inflected) => {
  const [word = '', before = '', after] = [words[index], words[index - 1], words[index + 1]]
  const isAfterThing = isNoun(tags, index - 1) && (word === 'present' || !isPlural(tags, index - 1, before))
  if (inflected || !needsObject(word) || !(isClosing(after) || after === 'to' || after === 'as')) return undefined
  let isDone = false
  for (let at = index - 1; !isMark(words[at]); at--) {
    if (has(GAPS, words[at])) return undefined
    isDone ||= isVerbWord(words, tags, at)
  }
  // `Tom and Anna present to the class`
  const isPair = words[index - 2] === 'and' && !isDone
  return !isPair && isAfterThing ? ['noun', 'adjective'] : undefined
}

/** `The shop sells soap and perfume.`: what needs an object has none, and no helper governs it. */
export const joinedThing: TaggedClue = (place, tags, inflected) => {
  const { words, index } = place
  const isJoined = isJoin(words[index - 1]) && isNoun(tags, index - 2) && isEdge(words[index + 1])
  return !inflected && isJoined && needsObject(words[index] ?? '') && !hasEarlierHelper(place) ? ['noun'] : undefined
}

/** `open that present`: behind a verb. */
export const pointedAt: TaggedClue = ({ words, index }, tags, inflected) =>
  !inflected && words[index - 1] === 'that' && hasTag(tags, index - 2, 'Verb') ? ['noun', 'adjective'] : undefined
