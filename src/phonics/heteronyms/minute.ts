// Whether `minute` is a time, or tells that something is tiny.

import type { Clue } from './clue.ts'
import { findBefore, isEdge, isMark, isName, type Place } from './place.ts'
import { isPast, isPresent } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ANYBODY: ReadonlySet<string> = new Set(
  'nobody everybody somebody anybody everyone someone anyone nothing everything something all both'.split(' '),
)
/** Stand behind a thing, and never behind a word that describes one. */
const AFTER_THING = [
  ANYBODY,
  is.ADVERBS,
  is.SUBJECTS,
  is.OBJECT_STARTS,
  is.PREPOSITIONS,
  is.CLAUSE_JOINS,
  is.BE,
  is.HAVE,
  is.MODALS,
]

/** Before what is tiny, where `that very minute` is a time: `too minute for us`. */
const BEFORE_TINY: ReadonlySet<string> = is.words('how quite rather so too')

/** `in a minute the hen came`: a describing word would have its thing behind it. */
export const time: Clue = (place) => {
  const after = place.words[place.index + 1]
  if (place.words[place.index] !== 'minute') return undefined
  const isAlone = isEdge(after) || isName(place, place.index + 1) || AFTER_THING.some((group) => has(group, after))
  const before = findBefore(place)
  if (isTold(place, before)) return ['adjective']
  return isAlone && !isMark(before) && !has(BEFORE_TINY, before) ? ['noun'] : undefined
}

/** `It was absolutely minute!`, `minute and grey`, `round and minute`: what something is; not `an hour and a minute`. */
function isTold({ words, index }: Place, before: string | undefined): boolean {
  const after = words[index + 1]
  if (has(is.BE, before) && (after === 'and' || after === 'but')) return true
  if (!isEdge(words[index + 1])) return false
  return has(is.BE, before) || has(is.LINKING, before) || (before === 'and' && has(is.ADJECTIVES, words[index - 2]))
}

/** What is seen, held, or likened: `found a minute bead`, `like a minute star`. */
const BEFORE_THING = is.words(
  'ate bought built carried caught drank drew dropped eat find found gave give gives grew has held hold hung inside into knitted like made notice noticed on ' +
    'picked saw see sewed spotted to under up wear wearing wears with wore',
)
/** `a minute later`, `a minute hand`, `a minute went`. */
const AFTER_TIME = is.words(
  'ago came earlier early fast fell hand hands late later left long longer more or past slow too went',
)

const BEFORE_TIME = is.words('about every for half in just only than wait waited within')

const PLURALS: ReadonlySet<string> = new Set([...is.PLURALS, 'feet', 'teeth'])
/** Before many tiny things, and never before a minute. */
const BEFORE_MANY = is.words(
  'are from has have had her his in into its many my of on our see saw some such their these those were with your',
)

const LOOKED_AT = is.words('all notice noticed of on saw see with')

/** `ants have minute feet`, `in minute letters`, `see the minute hairs`. */
function isBeforeMany({ words, index }: Place): boolean {
  const [before, after] = [words[index - 1], words[index + 1] ?? '']
  const isLed = has(BEFORE_MANY, before) || (before === 'the' && has(LOOKED_AT, words[index - 2]))
  return isLed && (has(PLURALS, after) || /[a-z]{2}[^su']s$/.test(after)) && !has(AFTER_TIME, after)
}

/** `A minute spider sat on it`: what stands behind `a minute` is the thing that is so small. */
export const tiny: Clue = (place) => {
  const { words, index } = place
  if (words[index] !== 'minute') return undefined
  const [before, after] = [words[index - 2], words[index + 1]]
  if (isBeforeMany(place)) return ['adjective']
  // `On the leaf sat a minute green frog`; not `Just a minute young man!`
  const isDescribed = (has(is.COLOURS, after) || has(is.ADJECTIVES, after)) && !has(BEFORE_TIME, before)
  const isLed = isMark(before) || has(is.BE, before) || has(BEFORE_THING, before) || isDescribed
  if (words[index - 1] !== 'a' || isEdge(after) || !isLed) return undefined
  const isTime = has(AFTER_TIME, after) || has(is.ADVERBS, after) || isPast(after) || isPresent(after)
  return isTime || /s$|ly$/.test(after ?? '') ? undefined : ['adjective']
}
