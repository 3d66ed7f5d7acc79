// What else stands in the clause of a word: a helper that could govern it.

import type { Place } from './place.ts'
import { isMark } from './place.ts'
import { BE, CLAUSE_JOINS, HAVE, has, LET, MAKE, MODALS, PERCEIVE, STOPS } from './vocabulary.ts'

const HELPERS = [MODALS, HAVE, BE, LET, MAKE, PERCEIVE]

/** True where a helper earlier in the clause may govern the word: `did the children read`, `we heard Meg read`. */
export function hasHelper(place: Place): boolean {
  // The edge of the sentence is a mark.
  for (let at = place.index - 1; ; at--) {
    const word = place.words[at]
    if (isMark(word) || has(CLAUSE_JOINS, word)) return false
    if (HELPERS.some((group) => has(group, word))) return true
  }
}

/** True where `to` or a helper such as `will` stands earlier in the sentence, beyond commas and `and` too: `will sing, dance and graduate`. */
export function hasEarlierHelper({ words, index }: Place): boolean {
  for (let at = index - 1; at >= 0 && !has(STOPS, words[at]); at--) {
    if (words[at] === 'to' || has(MODALS, words[at])) return true
  }
  return false
}

const ENDS: ReadonlySet<string> = new Set(['.', '!', '?', '…'])

/** True where the sentence of the place ends as no question does; without an end mark it may be one. */
export const isTold = ({ words, index }: Place): boolean => {
  const end = words.slice(index).find((word) => has(ENDS, word))
  return end !== undefined && end !== '?'
}
