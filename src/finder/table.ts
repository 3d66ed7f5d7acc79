// The compiled table of words that can be listed: each with its letter groups in both accents, and the first step of each
// built-in sequence at which it is readable. Made when the package is built, since reading and judging takes seconds.

import type { Accent } from '../phonics/types.ts'
import { findIndexOf } from '../sorted.ts'
import { splitSections } from '../words/bytes.ts'
import { toColumn } from '../words/first-steps.ts'

/** One group of letters as lists are searched by: see `Unit` of the engine. */
export interface ListUnit {
  readonly letters: string
  readonly key: string
  readonly sound: string
  readonly kind: 'correspondence' | 'inflection' | 'silent'
  readonly vowel: boolean
}

/** How a word is said in one accent. */
export interface ListPronunciation {
  readonly units: readonly ListUnit[]
  /** Place of the stressed vowel among the units. */
  readonly stressed: number
  readonly syllables: number
}

/** What the table holds of one word. */
export interface ListEntry {
  readonly word: string
  /** Place in the lexicon. */
  readonly place: number
  readonly pronunciations: Readonly<Record<Accent, ListPronunciation>>
  /** By `toColumn`: the place of the first step at which it is readable, and whether it is a sight word there. */
  readonly firstSteps: ReadonlyMap<string, FirstStep>
}

/** Undefined `step`: the sequence never gets there. */
export interface FirstStep {
  readonly step: number | undefined
  readonly isSight: boolean
}

/**
 * The pronunciations of all words in one accent, as numbers: what is asked of every word makes no objects. A word has at its
 * start how many units it has, the place of the stressed vowel, and how many syllables; then its units.
 */
export interface SoundTable {
  readonly units: readonly ListUnit[]
  readonly numbers: Uint16Array
  readonly starts: Uint32Array
}

/** The first steps of a sequence: asked of every word, so without making objects. */
export interface StepColumn {
  /** The place of the first step at which the word is readable; Infinity where the sequence never gets there. */
  stepAt(row: number): number
  /** Whether it is a sight word at that step. */
  isSightAt(row: number): boolean
}

export interface ListTable {
  readonly size: number
  soundsIn(accent: Accent): SoundTable
  wordAt(row: number): string
  /** Place of the word in the lexicon. */
  placeAt(row: number): number
  pronunciationAt(row: number, accent: Accent): ListPronunciation
  /** The steps of a built-in sequence in an accent; undefined where the table was not made for it. */
  findColumn(sequence: string, accent: Accent): StepColumn | undefined
  /** The row of a lower-case word; -1 where it is not in the table. */
  rowOf(word: string): number
}

export const TABLE_ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]
export const NEVER = 127
export const SIGHT = 128

function unpackUnit(packed: string): ListUnit {
  const [letters = '', key = '', sound = '', kind, vowel] = packed.split('\t')
  return { letters, key, sound, kind: kind as ListUnit['kind'], vowel: vowel === 'v' }
}

/** @throws RangeError where the bytes end too early */
export function openListTable(bytes: Uint8Array): ListTable {
  const [head = new Uint8Array()] = splitSections(bytes, 1)
  const { columns, units } = JSON.parse(new TextDecoder().decode(head)) as { columns: string[]; units: string[] }
  const [, packedWords, packedPlaces, american, british, ...steps] = splitSections(
    bytes,
    3 + TABLE_ACCENTS.length + columns.length,
  )
  if (!packedWords || !packedPlaces || !american || !british) throw new RangeError('the word list ends too early')
  const words = unpackWords(packedWords)
  const places = unpackPlaces(packedPlaces, words.length)
  const known = units.map(unpackUnit)
  const opened = new Map<Accent, SoundTable>()
  const soundsIn = (accent: Accent): SoundTable => {
    const found =
      opened.get(accent) ?? openSounds(accent === 'general-american' ? american : british, words.length, known)
    opened.set(accent, found)
    return found
  }
  return {
    size: words.length,
    wordAt: (row) => words[row] ?? '',
    placeAt: (row) => places[row] ?? -1,
    soundsIn,
    pronunciationAt: (row, accent) => toPronunciation(row, soundsIn(accent)),
    findColumn(sequence, accent) {
      const column = steps[columns.indexOf(toColumn(sequence, accent))]
      return column && toStepColumn(column)
    },
    rowOf: (word) => findIndexOf(words, word),
  }
}

const toStepColumn = (column: Uint8Array): StepColumn => ({
  stepAt(row) {
    const step = (column[row] ?? NEVER) & NEVER
    return step === NEVER ? Infinity : step
  },
  isSightAt: (row) => ((column[row] ?? 0) & SIGHT) !== 0,
})

function unpackWords(bytes: Uint8Array): readonly string[] {
  const text = new TextDecoder().decode(bytes)
  const words: string[] = []
  let before = ''
  for (let at = 0; at < bytes.length; ) {
    const more = bytes[at + 1] ?? 0
    before = before.slice(0, bytes[at] ?? 0) + text.slice(at + 2, at + 2 + more)
    words.push(before)
    at += 2 + more
  }
  return words
}

function unpackPlaces(bytes: Uint8Array, size: number): Uint32Array {
  const places = new Uint32Array(size)
  for (let row = 0, place = 0, at = 0; row < size; row++) {
    for (let scale = 1, byte = 0x80; byte >= 0x80; scale *= 128) {
      byte = bytes[at++] ?? 0
      place += (byte & 0x7f) * scale
    }
    places[row] = place
  }
  return places
}

function openSounds(bytes: Uint8Array, size: number, units: readonly ListUnit[]): SoundTable {
  const numbers = new Uint16Array(bytes.length)
  const starts = new Uint32Array(size)
  let from = 0
  let at = 0
  const next = (): number => {
    const low = bytes[from++] ?? 0
    return low < 0x80 ? low : (low & 0x7f) | ((bytes[from++] ?? 0) << 7)
  }
  for (let row = 0; row < size; row++) {
    starts[row] = at
    const length = next()
    numbers[at++] = length
    for (let k = 0; k < length + 2; k++) numbers[at++] = next()
  }
  return { units, numbers, starts }
}

function toPronunciation(row: number, { units, numbers, starts }: SoundTable): ListPronunciation {
  const at = starts[row] ?? 0
  const length = numbers[at] ?? 0
  const found: ListUnit[] = []
  for (let k = at + 3; k < at + 3 + length; k++) found.push(units[numbers[k] ?? 0] as ListUnit)
  return { units: found, stressed: numbers[at + 1] ?? 0, syllables: numbers[at + 2] ?? 0 }
}
