// What a look-alike is that stands alone, first, or before no object: mostly a thing.

import { hasEarlierHelper } from './clause.ts'
import { type Clue, FINITE, hasObject, NOMINAL } from './clue.ts'
import { isEdge, isMark } from './place.ts'
import { isSpoken } from './speech.ts'
import { NEEDS_NOTHING, needsObject } from './valency.ts'
import { isPast } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ORDERED: ReadonlySet<string> = new Set(['always', 'never', 'please'])
const CLOSING: ReadonlySet<string> = new Set(['”', '"'])
/** Said of what is not told by name: `Lives in the sea. Who is it?` */
const TOLD_ALONE: ReadonlySet<string> = new Set(['does', 'lives', 'uses'])
/** No thing, and no describing word, though they end as such do. */
const NO_GERUNDS: ReadonlySet<string> = new Set('anything everything nothing something during king'.split(' '))

/** `“Present!”`, `Permit? I have none.`, `Excuses, excuses!` */
export const lone: Clue = ({ words, index }, inflected) => {
  const [before, after] = [words[index - 1], words[index + 1]]
  if (!isMark(before) || before === '-' || !isMark(after) || after === '-') return undefined
  return inflected || needsObject(words[index] ?? '') ? NOMINAL : undefined
}

/** `Objects in water look bigger`: no sentence begins with a verb in -s, but one that leaves its subject out. */
export const firstPlural: Clue = (place, inflected) => {
  const { words, index } = place
  const isFirst = inflected && (index === 0 || (index === 1 && isMark(words[0])))
  if (has(is.QUESTIONS, words[index + 1])) return undefined
  return isFirst && !hasObject(place) && !has(TOLD_ALONE, words[index]) ? ['noun'] : undefined
}

/** `Never abuse animals`, `please use soap`. */
export const ordered: Clue = (place, inflected) => {
  const { words, index } = place
  const isOrder = !inflected && has(ORDERED, words[index - 1]) && isMark(words[index - 2])
  const word = words[index] ?? ''
  return isOrder && (word === 'use' || needsObject(word) || hasObject(place)) ? ['verb'] : undefined
}

/** `“That is not fair!” protests Meg`: behind what is said. */
export const behindSpeech: Clue = (place, inflected) => {
  const { words, index } = place
  const isBehind = has(CLOSING, words[index - 1]) && isMark(words[index - 2]) && !isSpoken(words, index)
  if (!isBehind || index < 3 || isEdge(words[index + 1])) return undefined
  return inflected ? ['verb'] : FINITE
}

/** `a singing contest`, `all the running contests`. */
export const gerund: Clue = (place, inflected) => {
  const { words, index } = place
  const [before = '', second = ''] = [words[index - 1], words[index - 2]]
  if (!/[aeiouy].*ing$/.test(before) || NO_GERUNDS.has(before) || hasObject(place)) return undefined
  const isLed = has(is.DETERMINERS, second) || has(is.PLURAL_DETERMINERS, second) || /.'s$/.test(second)
  if (!isLed || has(is.BE, second)) return undefined
  return !inflected || isEdge(words[index + 1]) ? NOMINAL : undefined
}

/** `wrapped presents all evening`: behind a verb that has its past. */
export const afterPast: Clue = (place, inflected) => {
  const { words, index } = place
  const after = words[index + 1]
  const isThing = inflected && isPast(words[index - 1]) && needsObject(words[index] ?? '')
  return isThing && !hasObject(place) && !has(is.HAVE, words[index - 1]) && after !== undefined ? ['noun'] : undefined
}

/** `sweets and presents for all`, `balloons, presents and games`: joined to its like, and before no object. */
export const joinedPlural: Clue = ({ words, index }, inflected) => {
  const [before, after] = [words[index - 1], words[index + 1]]
  const isJoined = isJoin(before) && isClosing(after)
  const isListed = before === ',' && isJoin(after)
  if (!inflected || !(isJoined || isListed) || !needsObject(words[index] ?? '')) return undefined
  const like = words[index - 2] === ',' ? words[index - 3] : words[index - 2]
  return /[a-z][^isu']s$/.test(like ?? '') ? ['noun'] : undefined
}

const isJoin = (word: string | undefined): boolean => word === 'and' || word === 'or'
const isClosing = (word: string | undefined): boolean => isEdge(word) || has(is.PREPOSITIONS, word)

/** `Name one object that is round`; not `this one`, nor `no one present`. */
export const one: Clue = (place, inflected) => {
  const { words, index } = place
  const second = words[index - 2]
  const isPronoun = has(is.DETERMINERS, second) || second === 'that' || second === 'which' || second === 'some'
  if (inflected || words[index - 1] !== 'one' || isPronoun) return undefined
  return words[index + 1] === 'that' || !hasObject(place) ? NOMINAL : undefined
}

const MANY: ReadonlySet<string> = new Set('both children few many most others people some'.split(' '))

/** `Many attribute the rain to him`; `some object that fell` is one. */
export const many: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  const isVerb = !inflected && has(MANY, place.words[place.index - 1]) && hasObject(place) && after !== 'that'
  return isVerb ? FINITE : undefined
}

/** `We will work and graduate.`, `finish school, graduate and find work`: governed by the helper of the verbs it is joined to. */
export const joinedUnderHelper: Clue = (place, inflected) => {
  const { words, index } = place
  if (inflected || !has(NEEDS_NOTHING, words[index])) return undefined
  const [before, after] = [words[index - 1], words[index + 1]]
  // `the event or object`: one determiner may lead both.
  const isLed = has(is.DETERMINERS, words[index - 3])
  const isJoined = !isLed && isJoin(before) && isClosing(after)
  const isListed = before === ',' && (isJoin(after) || after === ',')
  return (isJoined || isListed) && hasEarlierHelper(place) ? ['verb'] : undefined
}
