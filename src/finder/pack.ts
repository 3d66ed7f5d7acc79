// Packs the table of words that can be listed: the commonest units in one byte, words by what they share with the one before.

import { joinSections, toBytes } from '../words/bytes.ts'
import {
  type FirstStep,
  type ListEntry,
  type ListPronunciation,
  type ListUnit,
  NEVER,
  SIGHT,
  TABLE_ACCENTS,
} from './table.ts'

/** Entries in the order of their places. */
export function packListTable(entries: readonly ListEntry[], columns: readonly string[]): Uint8Array {
  const units = toUnitNumbers(entries)
  const text = new TextEncoder()
  return joinSections([
    text.encode(JSON.stringify({ columns, units: [...units.keys()] })),
    packWords(entries.map(({ word }) => word)),
    toBytes(entries.map(({ place }, row) => place - (entries[row - 1]?.place ?? 0))),
    ...TABLE_ACCENTS.map((accent) =>
      toBytes(entries.flatMap(({ pronunciations }) => packPronunciation(pronunciations[accent], units))),
    ),
    ...columns.map((name) => Uint8Array.from(entries, ({ firstSteps }) => packStep(firstSteps.get(name)))),
  ])
}

const packUnit = ({ letters, key, sound, kind, vowel }: ListUnit): string =>
  [letters, key, sound, kind, vowel ? 'v' : ''].join('\t')

/** The commonest units have the smallest numbers, so that they take one byte. */
function toUnitNumbers(entries: readonly ListEntry[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { pronunciations } of entries)
    for (const accent of TABLE_ACCENTS)
      for (const unit of pronunciations[accent].units) counts.set(packUnit(unit), (counts.get(packUnit(unit)) ?? 0) + 1)
  return new Map([...counts].sort((left, right) => right[1] - left[1]).map(([unit], number) => [unit, number]))
}

const packPronunciation = (
  { units, stressed, syllables }: ListPronunciation,
  numbers: ReadonlyMap<string, number>,
): number[] => [units.length, stressed, syllables, ...units.map((unit) => numbers.get(packUnit(unit)) ?? 0)]

const packStep = (first: FirstStep | undefined): number => (first?.step ?? NEVER) | (first?.isSight ? SIGHT : 0)

/** Each word as how many letters it shares with the one before, how many follow, and those. */
function packWords(words: readonly string[]): Uint8Array {
  const bytes: number[] = []
  words.forEach((word, row) => {
    const before = words[row - 1] ?? ''
    let shared = 0
    while (shared < word.length && word[shared] === before[shared]) shared++
    bytes.push(shared, word.length - shared, ...Array.from(word.slice(shared), (letter) => letter.charCodeAt(0)))
  })
  return Uint8Array.from(bytes)
}
