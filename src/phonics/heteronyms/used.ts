// `used`: with /zd/ as the verb, with /st/ before `to` where something was so before or is not strange any more.

import { beforeIndex, findBefore, isMark, isName, type Place } from './place.ts'
import type { Tags } from './tagged.ts'
import * as is from './vocabulary.ts'

export type Used = 'verb' | 'used-to'

const GROW = new Set('get gets got getting become became becoming grow grew quite'.split(' '))
/** Nobody uses a thing to be: before these, `used to` is always the old habit. */
const STATES = new Set('be have live love like hate think know want believe belong dream'.split(' '))
const JOINS = new Set('and but because when so if where since as while although who'.split(' '))

/** The form of `used` at the place; undefined where it cannot be told from the small words alone. */
export function findUsed(place: Place): Used | undefined {
  const next = place.words[place.index + 2]
  if (place.words[place.index + 1] !== 'to') return 'verb'
  const before = findBefore(place)
  if (is.has(GROW, before)) return 'used-to'
  if (is.has(is.BE, before)) return isThing(next) ? 'used-to' : undefined
  if (is.has(is.HAVE, before)) return 'verb'
  // `are you used to it`
  if (is.has(is.SUBJECTS, before) && is.has(is.BE, findBefore(place, 2))) return isThing(next) ? 'used-to' : undefined
  if (before === 'there' || is.has(STATES, next)) return 'used-to'
  return hasPlainSubject(place) ? 'used-to' : undefined
}

/** `is used to catch fish` against `is used to noise`: what the tagger says of the word after `to`. */
export function findTaggedUsed(place: Place, tags: Tags): Used | undefined {
  const before = findBefore(place)
  if (!is.has(is.BE, before)) return undefined
  const next = tags[place.index + 2]
  if (next?.has('Infinitive')) return 'verb'
  return next?.has('Noun') ? 'used-to' : undefined
}

/** `used to the cold`, `used to swimming`. */
function isThing(next: string | undefined): boolean {
  return next !== undefined && (is.OBJECT_STARTS.has(next) || /[a-z]{2}ing$/.test(next))
}

/** A subject with nothing before it that could be the thing used: `we used to`, not `the net we used to catch it`. */
function hasPlainSubject(place: Place): boolean {
  let at = beforeIndex(place)
  const word = place.words[at]
  if (isMark(word)) return false
  if (is.has(JOINS, word)) return word === 'who'
  const bare = is.has(is.SUBJECTS, word) || isName(place, at) || at === 0
  if (!bare) while (at > 0 && is.has(is.ADJECTIVES, place.words[at - 1])) at--
  if (!bare && is.has(is.DETERMINERS, place.words[at - 1])) at--
  const edge = place.words[at - 1]
  return isMark(edge) || is.has(JOINS, edge)
}
