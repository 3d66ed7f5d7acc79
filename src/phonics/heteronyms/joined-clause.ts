// Whether another verb of the sentence belongs to a clause that is joined to the one of the place.

import type { Place } from './place.ts'
import { isMark } from './place.ts'
import { isSpoken } from './speech.ts'
import { CLAUSE_JOINS, has, OBJECTS } from './vocabulary.ts'

export const RELATIVES = new Set(['that', 'which', 'who', 'whose', 'what'])
export const CLAUSES = new Set(
  'but because so if where when that which who while as until till before after'.split(' '),
)
/** `to the pond`, `to bed`: no verb. */
export const PLACES = new Set('the a an my his her its our their your bed school town'.split(' '))

/** Both are spoken by somebody in the story, or both are told. */
export function isSameVoice(place: Place, at: number): boolean {
  return isSpoken(place.words, at) === isSpoken(place.words, place.index)
}

/** `read to us`, `went to the pond`: behind `to` stands no verb. */
const isThingNext = (word: string | undefined): boolean => has(PLACES, word) || has(OBJECTS, word)

/** Whether the verb at `at` is of a clause that a join or a mark parts from the place, and of no relative one. */
export function isJoined(place: Place, at: number): boolean {
  const between = place.words.slice(Math.min(at, place.index) + 1, Math.max(at, place.index))
  if (between.some((word, i) => RELATIVES.has(word) || (word === 'to' && !isThingNext(between[i + 1])))) return false
  return between.some((word) => CLAUSE_JOINS.has(word) || word === 'then' || isMark(word))
}
