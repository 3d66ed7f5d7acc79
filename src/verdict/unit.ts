// Whether a child knows one group of letters of a word, and what is missing where not.

import type { CorrespondenceKey, Unit } from '../phonics/types.ts'
import type { Ending, EndingChange, Knowledge } from '../sequence/types.ts'
import type { ReasonCode } from './types.ts'

/** What is wrong with a unit: the kind of lack, and the correspondence that would mend it. */
export interface UnitFault {
  readonly code: Extract<ReasonCode, 'irregular' | 'ending' | 'reduced-vowel'>
  readonly key?: CorrespondenceKey
}

/** Where the unit stands. */
export interface UnitPlace {
  /** The word has more than one syllable. */
  readonly isLong: boolean
  /** An ending follows at once. */
  readonly isBeforeEnding: boolean
  /** The word is shortened by an apostrophe. */
  readonly isContraction: boolean
}

/** The sounds called short, letter by letter (both of `o`: LOT is /ɒ/ in Britain, /ɑ/ in America). */
const SHORT_SOUNDS: Readonly<Record<string, readonly string[]>> = {
  a: ['æ'],
  e: ['ɛ', 'e'],
  i: ['ɪ'],
  o: ['ɒ', 'ɑ', 'ɑː'],
  u: ['ʌ'],
  y: ['ɪ'],
}

const ENDINGS: Readonly<Record<string, Ending>> = {
  s: '-s',
  es: '-es',
  ed: '-ed',
  d: '-ed',
  ing: '-ing',
  er: '-er',
  r: '-er',
  est: '-est',
  st: '-est',
  "'s": "'s",
  "s'": "'s",
  "'": "'s",
}

/** How an ending is sounded out letter by letter, where that can be done. */
const SOUNDED: Readonly<Record<string, readonly CorrespondenceKey[]>> = {
  'ing=ɪŋ': ['i=ɪ', 'ng=ŋ'],
  'est=ɪst': ['e=ɛ', 's=s', 't=t'],
  'est=əst': ['e=ɛ', 's=s', 't=t'],
  'ed=ɪd': ['e=ɛ', 'd=d'],
  'ed=əd': ['e=ɛ', 'd=d'],
  'es=ɪz': ['e=ɛ', 's=z'],
  'es=əz': ['e=ɛ', 's=z'],
}

const APOSTROPHE = /['’‘ʼ]/

/** The name of a correspondence, with small letters and straight apostrophes. */
export function toKey(letters: string, sound: string): CorrespondenceKey {
  return `${letters.toLowerCase().replace(/[’‘]/g, "'")}=${sound}`
}

/** The ending that a unit is, or undefined for other units. */
export function findEnding(unit: Unit): Ending | undefined {
  return unit.kind === 'inflection' ? ENDINGS[unit.letters.toLowerCase().replace(/[’‘]/g, "'")] : undefined
}

/**
 * What a child lacks to read the unit; undefined where it is known. The piece with the apostrophe of a contraction (`n't`,
 * `'ll`) is no fault of its own: whether the contraction is taught is asked of the whole word.
 */
export function findUnitFault(unit: Unit, place: UnitPlace, knowledge: Knowledge): UnitFault | undefined {
  const { key } = unit
  if (place.isContraction && APOSTROPHE.test(unit.letters)) return undefined
  if (unit.kind === 'inflection') return isEndingKnown(unit, knowledge) ? undefined : { code: 'ending', key }
  if (unit.kind === 'silent' && place.isBeforeEnding) return undefined
  if (APOSTROPHE.test(unit.letters) && unit.kind === 'silent') return findOwnerFault(knowledge)
  const isKnown = knowledge.correspondences.has(key)
  if (unit.base !== undefined) return findChangeFault(unit, unit.base, isKnown, knowledge)
  if (isKnown) return undefined
  if (unit.reduced && isShortVowelKnown(unit.letters, knowledge)) {
    return place.isLong && isReducedAccepted(knowledge) ? undefined : { code: 'reduced-vowel', key }
  }
  return { code: 'irregular', key }
}

/** Whether the owner's ending can be read; on a name it needs no letters to be known. */
export function findOwnerFault(knowledge: Knowledge): UnitFault | undefined {
  const isKnown = knowledge.endings.has("'s") || knowledge.endingsMode === 'sounded'
  return isKnown ? undefined : { code: 'ending', key: "'s=" }
}

// The `nn` of `running` can be read by who knows that an ending doubles the `n`, or by who knows `nn` as in `dinner`.
function findChangeFault(unit: Unit, base: string, isKnown: boolean, knowledge: Knowledge): UnitFault | undefined {
  const sound = unit.key.slice(unit.key.indexOf('=') + 1)
  if (knowledge.correspondences.has(toKey(unit.letters, sound))) return undefined
  if (!isKnown) return { code: 'irregular', key: unit.key }
  const change = findChange(unit.letters, base)
  return change === undefined || knowledge.endingChanges.has(change) ? undefined : { code: 'ending', key: unit.key }
}

function isEndingKnown(unit: Unit, knowledge: Knowledge): boolean {
  const ending = findEnding(unit)
  if (ending !== undefined && knowledge.endings.has(ending)) return true
  if (knowledge.endingsMode === 'taught') return false
  return (SOUNDED[unit.key] ?? [unit.key]).every((part) => knowledge.correspondences.has(part))
}

/** How an ending changed the letters: `nn` for `n`, `a` for `a_e`, `i` or `ie` for `y`; undefined where they are as before. */
export function findChange(letters: string, base: string): EndingChange | undefined {
  const now = letters.toLowerCase()
  if (now === base) return undefined
  if (now.startsWith('i') && base === 'y') return 'y-to-i'
  if (base.endsWith('e')) return 'drop-e'
  return now.startsWith(base) ? 'double' : undefined
}

function isShortVowelKnown(letters: string, knowledge: Knowledge): boolean {
  const letter = letters.toLowerCase()
  return (SHORT_SOUNDS[letter] ?? []).some((sound) => knowledge.correspondences.has(toKey(letter, sound)))
}

function isReducedAccepted(knowledge: Knowledge): boolean {
  return knowledge.reducedVowels === 'accept' && (knowledge.limits.syllables ?? 2) >= 2
}
