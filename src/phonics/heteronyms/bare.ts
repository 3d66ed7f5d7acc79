// What a look-alike is that stands alone, first, behind speech, or behind small words that an order or a verb begins with.

import { startsWithCapital } from '../../letter-kinds.ts'
import { type Clue, FINITE, hasObject, NOMINAL, OPENERS } from './clue.ts'
import { isEdge, isMark } from './place.ts'
import { isSpoken } from './speech.ts'
import { DESCRIBING, needsObject } from './valency.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ORDERED: ReadonlySet<string> = new Set(['always', 'never', 'please'])
const CLOSING: ReadonlySet<string> = new Set(['”', '"'])
/** Said of what is not told by name: `Lives in the sea. Who is it?` */
const TOLD_ALONE: ReadonlySet<string> = new Set(['does', 'lives', 'uses'])
/** No thing, and no describing word, though they end as such do. */
const NO_GERUNDS: ReadonlySet<string> = new Set('anything everything nothing something during king'.split(' '))

/** `Refuse, and you will be sorry`, `Rebel and you will be caught`. */
export const threat: Clue = ({ words, index }, inflected) => {
  const isOrder = !inflected && isMark(words[index - 1]) && !needsObject(words[index] ?? '')
  const rest = words.slice(index + 1)
  const isParted = rest[0] === ','
  const [join, person, helper] = isParted ? rest.slice(1) : rest
  const isJoined = (join === 'and' || join === 'or') && has(is.SUBJECTS, person)
  const isThreat = isJoined && (isParted || has(is.MODALS, helper))
  return isOrder && isThreat && !has(DESCRIBING, words[index]) ? ['verb'] : undefined
}

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

/** What may follow `Use` where it is a thing: `Use of it`. */
const AFTER_USE: ReadonlySet<string> = new Set('and as by for in is of or was'.split(' '))

/** `Never abuse animals`, `please use soap`; `Use plenty of soap`. */
export const ordered: Clue = (place, inflected) => {
  const { words, index } = place
  const [first, after] = [words[index - 1], words[index + 1]]
  const opens = words[index] === 'use' && (first === undefined || has(OPENERS, first))
  if (opens && !isEdge(after) && !has(AFTER_USE, after)) return ['verb']
  // `Produce at least six eggs!`
  const isAtLeast = after === 'at' && (words[index + 2] === 'least' || words[index + 2] === 'most')
  if (!inflected && isAtLeast && (first === undefined || has(OPENERS, first))) return ['verb']
  const isOrder = !inflected && has(ORDERED, words[index - 1]) && isMark(words[index - 2])
  const word = words[index] ?? ''
  return isOrder && (word === 'use' || needsObject(word) || hasObject(place)) ? ['verb'] : undefined
}

/** `“That is not fair!” protests Meg`: behind what is said. */
export const behindSpeech: Clue = (place, inflected) => {
  const { words, written, index } = place
  if (startsWithCapital(written[index] ?? '')) return undefined
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

const OFTEN: ReadonlySet<string> = new Set('always never often rarely seldom sometimes soon usually'.split(' '))

/** `Being tired never excuses being rude`, `old men often combat it`; not `they were never presents`. */
export const often: Clue = ({ words, index }, inflected) => {
  if (!has(OFTEN, words[index - 1])) return undefined
  const second = words[index - 2]
  const isLed = [is.MODALS, is.LINKING, is.GROW, is.SUBJECTS, is.SINGULAR_SUBJECTS].some((group) => has(group, second))
  const isPlain = !isLed && second !== 'to' && !has(DESCRIBING, words[index])
  const isNoun = isMark(second) || [is.BE, is.HAVE, is.CLAUSE_STARTS].some((group) => has(group, second))
  if (isNoun) return undefined
  return inflected ? ['verb'] : isPlain ? FINITE : undefined
}

const FIRST: ReadonlySet<string> = new Set(['first', 'last', 'next'])

/** `First use the soap`, `Weather stations record the wind`: first but for one or two words, and before an object. */
export const nearlyFirst: Clue = (place, inflected) => {
  const { words, index } = place
  if (inflected || !hasObject(place) || words[index + 1] === 'that') return undefined
  const before = words[index - 1] ?? ''
  if (has(FIRST, before) && isMark(words[index - 2])) return FINITE
  const isSmall = [is.PREPOSITIONS, is.DETERMINERS, is.BE, is.HAVE, is.MODALS].some((group) => has(group, before))
  return index === 2 && is.looksPlural(before) && !isSmall && !has(is.PREPOSITIONS, words[0]) ? FINITE : undefined
}
