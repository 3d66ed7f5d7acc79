// Opens the lexicon file and finds words in it, in place: no list of words is ever built.

import { findLastIndex } from '../../sorted.ts'
import { openHeteronyms } from '../heteronyms/table.ts'
import type { Heteronyms } from '../heteronyms/types.ts'
import { CLOSE } from '../lattice.ts'
import { type Row, readRows } from '../rows.ts'
import { BLOCK, CLOSE_CODE, HEADER, INFLECTED, MAGIC, VERSION, WIDE } from './format.ts'
import { openSlips, type SlipWords } from './slip-words.ts'
import { findSeams, readParts } from './word-tables.ts'

type Stress = 0 | 1 | 2

/** A word as it stands in the file: paths of row ids with stress, or a stem with an ending. */
type Stored = {
  /** A name that its bearers may say otherwise. */
  readonly unsure?: true
  /** A word that is such a name where it has a capital. */
  readonly unsureAsName?: true
  /** See `RawPronunciation`. */
  readonly seams?: readonly number[]
} & (
  | {
      readonly pronunciations: readonly { readonly path: readonly number[]; readonly stress: readonly Stress[] }[]
    }
  | { readonly ending: number; readonly change: number; readonly mask: number }
)

export interface Lexicon {
  /** The table of correspondences; a row's id is its place. */
  readonly rows: readonly Row[]
  /** How many words it holds. */
  readonly size: number
  /** The guesser's model, as bytes. */
  readonly model: Uint8Array
  /** The lines of the spellings that are ordinary in an accent: see `readOrdinary`. */
  ordinary(accent: string): string
  /** By place of a word: how it goes into compounds, as first part × 4 + as last part. Read when first asked for. */
  readonly parts: ReadonlyMap<number, number>
  /** Read when first asked for. */
  readonly slips: SlipWords
  /** Words with several spoken forms. */
  readonly heteronyms: Heteronyms
  /** The place of a lower-case word in the order of all words, or -1. */
  indexOf(word: string): number
  /** The word at a place; empty outside. */
  wordAt(index: number): string
  find(word: string): Stored | undefined
  /** All words in order: a new list at each call. */
  words(): string[]
}

const DIGITS: readonly Stress[] = [0, 1, 2]

/** Opens the bytes of a lexicon file. Throws a plain error where they are none or of another version. */
export function openLexicon(bytes: Uint8Array): Lexicon {
  if (MAGIC.some((byte, at) => bytes[at] !== byte)) throw new Error('this is not a lexicon file')
  if (bytes[4] !== VERSION)
    throw new Error(`the lexicon file is of version ${bytes[4]}, not ${VERSION}: build the package again`)
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const end = (k: number) => (k < 0 ? HEADER : view.getUint32(8 + k * 4, true))
  const section = (k: number) => bytes.subarray(end(k - 1), end(k))
  const text = new TextDecoder()
  const rows = readRows(text.decode(section(0)))
  const patternOf = openPatterns(text.decode(section(1)))
  const blocks = end(1)
  const count = (end(2) - blocks) / 4
  const words = section(3)
  const blockAt = (block: number) => view.getUint32(blocks + block * 4, true)
  const letters = new Uint8Array(256)
  const unsure = section(8)
  const isMarked = (index: number, start: number) => (((unsure[start + (index >> 3)] ?? 0) >> (index & 7)) & 1) === 1
  let parts: ReadonlyMap<number, number> | undefined
  let slips: SlipWords | undefined

  /** Steps over the word at `at`, leaving its letters in `letters`; gives its length and where its payload lies. */
  function step(at: number): { length: number; payload: number; next: number } {
    const shared = words[at] ?? 0
    const more = words[at + 1] ?? 0
    for (let k = 0; k < more; k++) letters[shared + k] = words[at + 2 + k] ?? 0
    const payload = at + 2 + more + 1
    return { length: shared + more, payload, next: payload + (words[payload - 1] ?? 0) }
  }

  /** Whether the first word of a block sorts before a word or is it: it has all its letters, in place. */
  function isNotAfter(at: number, word: string): boolean {
    const length = words[at + 1] ?? 0
    const least = Math.min(length, word.length)
    for (let k = 0; k < least; k++) {
      const difference = (words[at + 2 + k] ?? 0) - word.charCodeAt(k)
      if (difference !== 0) return difference < 0
    }
    return length <= word.length
  }

  /** Each word of a block shares its first letters with the one before, so that most are passed by their first byte alone. */
  function locate(word: string): { index: number; payload: number } | undefined {
    const low = Math.max(
      0,
      findLastIndex(count, (block) => isNotAfter(blockAt(block), word)),
    )
    const stop = low + 1 < count ? blockAt(low + 1) : words.length
    /** How many letters the words passed so far have in common with the one that is looked for. */
    let same = 0
    for (let at = blockAt(low), k = 0; at < stop; k++) {
      const shared = words[at] ?? 0
      const end = at + 2 + (words[at + 1] ?? 0)
      if (shared < same) return undefined
      if (shared === same) {
        let letter = at + 2
        for (; letter < end && words[letter] === word.charCodeAt(same); letter++) same++
        const isWhole = same === word.length
        if (letter === end && isWhole) return { index: low * BLOCK + k, payload: end + 1 }
        if (letter < end && (isWhole || (words[letter] ?? 0) > word.charCodeAt(same))) return undefined
      }
      at = end + 1 + (words[end] ?? 0)
    }
    return undefined
  }

  /** All words at once: the letters in hand are shared with every other look-up, so no lazy walk may hold them. */
  function toWords(): string[] {
    const all: string[] = []
    for (let at = 0; at < words.length; ) {
      const { length, next } = step(at)
      all.push(String.fromCharCode(...letters.subarray(0, length)))
      at = next
    }
    return all
  }

  const last = count > 0 ? countBlock(blockAt(count - 1)) : 0
  function countBlock(from: number): number {
    let n = 0
    for (let at = from; at < words.length; n++) at = step(at).next
    return n
  }

  return {
    rows,
    heteronyms: openHeteronyms(text.decode(section(7)), section(10)),
    size: count > 0 ? (count - 1) * BLOCK + last : 0,
    model: section(4),
    ordinary(accent) {
      const tables = text.decode(section(5)).split('\n\n')
      const table = tables.find((one) => one.startsWith(`${accent}\n`)) ?? ''
      return table.slice(accent.length + 1)
    },
    get parts() {
      return (parts ??= readParts(section(6)))
    },
    get slips() {
      return (slips ??= openSlips(section(11)))
    },
    indexOf: (word) => (word.length > 200 ? -1 : (locate(word)?.index ?? -1)),
    wordAt(index) {
      const block = Math.floor(index / BLOCK)
      if (index < 0 || block >= count) return ''
      let at = blockAt(block)
      for (let k = 0; at < words.length; k++) {
        const { length, next } = step(at)
        if (k === index % BLOCK) return String.fromCharCode(...letters.subarray(0, length))
        at = next
      }
      return ''
    },
    find(word) {
      const found = word === '' || word.length > 200 ? undefined : locate(word)
      const stored = found && decode(words, found.payload, word.length, rows, patternOf)
      const seams = found && findSeams(section(9), found.index)
      const isDoubtful = found !== undefined && isMarked(found.index, 0)
      const isNameToo = found !== undefined && isMarked(found.index, unsure.length / 2)
      if (!stored || (!isDoubtful && !isNameToo && seams === undefined)) return stored
      const doubt = { ...(isDoubtful && { unsure: true as const }), ...(isNameToo && { unsureAsName: true as const }) }
      return { ...stored, ...doubt, ...(seams && { seams }) }
    },
    words: toWords,
  }
}

/** The stress of a word's vowels by its code, each laid out when a word first has it. */
function openPatterns(lines: string): (code: number) => readonly Stress[] {
  const texts = lines.split('\n')
  const known: (readonly Stress[] | undefined)[] = []
  return (code) => (known[code] ??= Array.from(texts[code] ?? '', (digit) => DIGITS[Number(digit)] ?? 0))
}

function decode(
  words: Uint8Array,
  payload: number,
  length: number,
  rows: readonly Row[],
  patternOf: (code: number) => readonly Stress[],
): Stored {
  const end = payload + (words[payload - 1] ?? 0)
  if (words[payload] === INFLECTED) {
    const packed = words[payload + 1] ?? 0
    return { ending: packed >> 3, change: packed & 7, mask: words[payload + 2] ?? 0 }
  }
  const pronunciations: { path: number[]; stress: readonly Stress[] }[] = []
  for (let at = payload; at < end; ) {
    const stress = patternOf(words[at++] ?? 0)
    const path: number[] = []
    for (let used = 0; used < length && at < end; ) {
      let code = words[at++] ?? 0
      if (code >= WIDE) code = WIDE + ((code - WIDE) << 8) + (words[at++] ?? 0)
      path.push(code === CLOSE_CODE ? CLOSE : code - 1)
      used += code === CLOSE_CODE ? 1 : (rows[code - 1]?.head.length ?? 1)
    }
    pronunciations.push({ path, stress })
  }
  return { pronunciations }
}
