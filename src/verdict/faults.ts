// Everything that stands between a child and one pronunciation of a word, in order of use to a teacher.

import { findApostrophe, hasApostrophe, toLetters } from '../apostrophe.ts'
import type { CorrespondenceKey, Pronunciation, Unit } from '../phonics/types.ts'
import { toSightKey } from '../sequence/knowledge.ts'
import type { Knowledge } from '../sequence/types.ts'
import { isContraction } from './apostrophe.ts'
import { toShapes } from './shape.ts'
import type { Reason, ReasonCode } from './types.ts'
import {
  findChangeLack,
  findFurtherFault,
  findUnitFault,
  isReadAsEnding,
  toReadingKeys,
  type UnitFault,
  type UnitPlace,
} from './unit.ts'

/** All reasons, the most useful to a teacher first: the type asks for each of them. */
const ORDER = {
  'sight-word-later': 0,
  abbreviation: 1,
  'correspondence-later': 2,
  irregular: 3,
  'correspondence-untaught': 4,
  'too-many-letters': 5,
  'too-many-syllables': 6,
  shape: 7,
  ending: 8,
  contraction: 9,
  'reduced-vowel': 10,
  misspelt: 11,
  unsure: 12,
  'unknown-word': 13,
} as const satisfies Record<ReasonCode, number>

export const REASON_CODES = Object.keys(ORDER) as readonly ReasonCode[]

/** The reasons with the most useful first; those of one kind stay in order of place. */
export function inOrder(reasons: readonly Reason[]): readonly Reason[] {
  if (reasons.length < 2) return reasons
  const isOwnerFirst = reasons.some(isOwnerEnding) && reasons.every(isShortWithoutOwner)
  const toRank = (reason: Reason): number =>
    isOwnerFirst && isOwnerEnding(reason) ? BEFORE_LIMITS : ORDER[reason.code]
  return [...reasons].sort((left, right) => toRank(left) - toRank(right))
}

const BEFORE_LIMITS = ORDER['too-many-letters'] - 0.5

/** `Ben's` is too long for its `'s` alone: a maker can leave that out, and cannot shorten Ben. */
const isOwnerEnding = ({ code, key }: Reason): boolean => code === 'ending' && hasApostrophe(key ?? '')

/** Whether the word would be short enough without the s of its owner's ending. */
const isShortWithoutOwner = ({ code, found, allowed }: Reason): boolean =>
  code !== 'too-many-letters' || Number(found) - 1 <= Number(allowed)

/** Why this pronunciation cannot be sounded out with this knowledge; empty where it can. `word` is the word as written. */
export function findFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  return inOrder([
    ...findUnitFaults(word, pronunciation, knowledge),
    ...findWholeFaults(word, pronunciation, knowledge),
  ])
}

/**
 * The same of the letters from a place on, where those before it are known: of the `ness` of `kindness`. It is read in the whole word,
 * where its vowel is weak.
 */
export function findFaultsFrom(
  start: number,
  word: string,
  pronunciation: Pronunciation,
  knowledge: Knowledge,
): readonly Reason[] {
  const isBehind = ({ spans: [first] }: Unit) => (first?.[1] ?? 0) > start
  const rest = { ...pronunciation, units: pronunciation.units.filter(isBehind) }
  const faults = findUnitFaults(word, pronunciation, knowledge).filter(({ unit }) => unit && isBehind(unit))
  return inOrder([...faults, ...findWholeFaults(word, rest, knowledge)])
}

/** Whether there is no fault; stops at the first, as it is asked most often. */
export function isSoundedOut(word: string, pronunciation: Pronunciation, knowledge: Knowledge): boolean {
  const places = toPlaces(word, pronunciation)
  const isUnread = (unit: Unit, at: number) => findUnitFault(unit, places[at] as UnitPlace, knowledge) !== undefined
  return !pronunciation.units.some(isUnread) && findWholeFaults(word, pronunciation, knowledge).length === 0
}

/** Whether a fault found with less knowledge is gone with more. */
export function isMended(fault: Reason, word: string, pronunciation: Pronunciation, knowledge: Knowledge): boolean {
  const { unit } = fault
  if (unit !== undefined) {
    // The fault may have been found in another pronunciation, which was cut otherwise.
    const at = pronunciation.units.indexOf(unit)
    const place = at < 0 ? createPlaces(word, pronunciation)(unit, at) : toPlaces(word, pronunciation)[at]
    const still = findFaultsOf(unit, place as UnitPlace, knowledge)
    return still.every(({ code }) => toLack(code) !== toLack(fault.code))
  }
  const start = fault.letters[0]?.[0]
  const still = findWholeFaults(word, pronunciation, knowledge)
  return !still.some((other) => other.code === fault.code && other.letters[0]?.[0] === start)
}

function findUnitFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  const places = toPlaces(word, pronunciation)
  return pronunciation.units.flatMap((unit, at) => {
    const faults = findFaultsOf(unit, places[at] as UnitPlace, knowledge)
    return faults.length === 0 ? NONE : faults.map((fault) => ({ ...fault, letters: unit.spans, unit }))
  })
}

/** Letters that are not known, how an ending changes them, and that a vowel is weak are three lacks. */
const toLack = (code: ReasonCode): ReasonCode | 'letters' =>
  code === 'ending' || code === 'reduced-vowel' ? code : 'letters'

const NO_FAULTS: readonly UnitFault[] = []
const NONE: readonly Reason[] = []

function findFaultsOf(unit: Unit, place: UnitPlace, knowledge: Knowledge): readonly UnitFault[] {
  const first = findUnitFault(unit, place, knowledge)
  if (first === undefined) return NO_FAULTS
  const further = toLack(first.code) === 'letters' ? findFurtherFault(unit, place, knowledge) : undefined
  return further === undefined ? [first] : [first, further]
}

/** The correspondences any one of which says what a unit of the word says. */
export const findReadingKeys = (unit: Unit, { units }: Pick<Pronunciation, 'units'>): readonly CorrespondenceKey[] =>
  toReadingKeys(unit, findEndingLetters(units))

const findEndingLetters = (units: readonly Unit[]): string | undefined =>
  units.find(({ kind }) => kind === 'inflection')?.letters.toLowerCase()

/** Changes before an ending that are missing where the letters are missing too: told beside them, as both must be taught. */
export function findHiddenChanges(
  reasons: readonly Reason[],
  pronunciation: Pronunciation,
  knowledge: Knowledge,
): readonly Reason[] {
  return reasons.flatMap(({ code, unit, letters }) => {
    if (unit === undefined || (code !== 'correspondence-later' && code !== 'correspondence-untaught')) return []
    const lack = findChangeLack(unit, findEndingLetters(pronunciation.units), knowledge)
    return lack === undefined ? [] : [{ ...lack, letters, unit }]
  })
}

/** Of the word asked last: a word is judged at one step after another. */
let last: { readonly word: string; readonly of: Pronunciation; readonly places: readonly UnitPlace[] } | undefined

/** Where each unit of a word stands. */
function toPlaces(word: string, pronunciation: Pronunciation): readonly UnitPlace[] {
  if (last?.of === pronunciation && last.word === word) return last.places
  const places = pronunciation.units.map(createPlaces(word, pronunciation))
  last = { word, of: pronunciation, places }
  return places
}

function createPlaces(word: string, { units }: Pronunciation): (unit: Unit, at: number) => UnitPlace {
  const isShort = isContraction(word)
  const ending = findEndingLetters(units)
  const hasTwoVowels = units.filter(({ vowel }) => vowel).length > 1
  return ({ reduced, kind }, at) => ({
    isContraction: isShort,
    isLong: hasTwoVowels && (reduced === true || kind === 'silent'),
    ending,
    isBeforeEnding: kind === 'silent' && units[at + 1]?.kind === 'inflection',
  })
}

function findWholeFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  const faults = findLimitFaults(word, pronunciation, knowledge)
  const shapes = findShapeFaults(word, pronunciation, knowledge)
  const contraction = findContractionFaults(word, knowledge)
  // Most words have none of these.
  return shapes.length + contraction.length === 0 ? faults : [...faults, ...shapes, ...contraction]
}

function findLimitFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  const letters = findLetterFaults(word, knowledge)
  const syllables = findSyllableFaults(word, pronunciation, knowledge)
  return letters.length === 0 ? syllables : [...letters, ...syllables]
}

/** Whether a step allows a word of so many letters and syllables. */
export function isWithinLimits(word: string, pronunciation: Pronunciation, knowledge: Knowledge): boolean {
  return findLimitFaults(word, pronunciation, knowledge).length === 0
}

// Each part of a hyphenated word is read by itself, so each has the whole limit.
function findLetterFaults(word: string, knowledge: Knowledge): readonly Reason[] {
  const allowed = knowledge.limits.letters
  if (allowed === undefined) return NONE
  return [...word.matchAll(/[^\-‐‑]+/g)].flatMap((part) => {
    const found = toLetters(part[0]).length
    const letters = [[part.index, part.index + part[0].length]] as const
    return found > allowed ? [{ code: 'too-many-letters' as const, letters, found, allowed }] : []
  })
}

function findSyllableFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  const allowed = knowledge.limits.syllables
  const found = pronunciation.syllables.length
  if (allowed === undefined || found <= allowed) return NONE
  return [{ code: 'too-many-syllables', letters: [[0, word.length]], found, allowed }]
}

function findShapeFaults(word: string, pronunciation: Pronunciation, knowledge: Knowledge): readonly Reason[] {
  const shapes = knowledge.shapes
  if (shapes === 'any') return NONE
  const found = toShapes(word, pronunciation, (unit) => isReadAsEnding(unit, knowledge))
  return found.flatMap(({ shape, letters }) =>
    shapes.has(shape) ? [] : [{ code: 'shape' as const, letters, found: shape, allowed: [...shapes].join(', ') }],
  )
}

/** Whether a word that is shortened by an apostrophe is taught, by name or with all its kind. */
export function isContractionTaught(word: string, { contractions }: Knowledge): boolean {
  return contractions === 'any' || contractions.has(toSightKey(word))
}

function findContractionFaults(word: string, knowledge: Knowledge): readonly Reason[] {
  if (!isContraction(word) || isContractionTaught(word, knowledge)) return NONE
  const at = findApostrophe(word)
  return [{ code: 'contraction', letters: [[at, at + 1]] }]
}
