// `used` in a clause that has no thing of its own: `what she used to say`, `like you used`.

import { findBefore, isEdge, type Place } from './place.ts'
import { ADVERBS, has, SUBJECTS, words as setOf } from './vocabulary.ts'

/** What is done with no tool: `what I used to do`, `what he used to say`. */
const TOOLLESS = setOf('call do feel hear say see tell')
const TIMES = setOf('daily every weekly')
const LIKENED = setOf('as like than')

/** `what she used to say to him`, `what he used to get daily`: the verb has no other object than `what`. */
export function isWhatWasDone(place: Place): boolean {
  const { words, index } = place
  if (findBefore(place, 2) !== 'what') return false
  const [verb, after] = [words[index + 2], words[index + 3]]
  return has(TOOLLESS, verb) || isEdge(after) || has(ADVERBS, after) || has(TIMES, after)
}

/** `doing everything like you used`, and `on paper like we used`: only the story tells. */
export const isLikened = (place: Place): boolean =>
  isEdge(place.words[place.index + 1]) && has(LIKENED, findBefore(place, 2)) && has(SUBJECTS, findBefore(place))
