// The plain pronunciation of a made word: each group of letters says what it says first, as a beginner reads `zirb` or `Zub`.
//
//   zog      z o g           a vowel letter shut in is short
//   zake     z a_e k         a split vowel
//   flimber  f l i m b er    two shut-in syllables
//   zibo     -               an open syllable could be long or short: not a plain word

import { isVowel } from '../arpabet.ts'
import { CLOSE, type RowSet } from '../lattice.ts'
import { CONSONANTS, ONSETS, type PlainRow, SPLIT, VOWELS } from './plain-table.ts'

/** A plain pronunciation: rows of the table with the stress of each vowel sound. */
export interface Plain {
  readonly path: readonly number[]
  readonly stress: readonly (0 | 1 | 2)[]
}

const MOST = 6
const NOISE = /([bdfgmprstz])\1|ch|ck|sh|th|[a-z]/g
const LONGEST_LETTERS = 4

interface Part {
  readonly letters: string
  readonly sounds: readonly string[]
  readonly isVowel: boolean
}

export interface PlainReader {
  /** Every plain pronunciation, the first one first; none where the letters do not follow the plain pattern of a word. */
  read(word: string): readonly Plain[]
  /** The path of a word without vowels, letter by letter: `tsk`, `grr`. */
  readNoise(word: string): readonly number[] | undefined
}

export function createPlainReader(set: RowSet): PlainReader {
  const ids = new Map(set.rows.map(({ id, letters, phones }) => [`${letters} ${phones.join(' ')}`, id]))
  const byLetters = groupRows()
  return {
    read(word) {
      const parts = cutPlain(word, byLetters)
      if (!parts || !isSayable(parts)) return []
      return combine(parts, ids).map((path) => ({ path, stress: toStress(path, set) }))
    },
    readNoise(word) {
      const parts = word.match(NOISE)?.map((letters) => CONSONANTS.findLast(([name]) => name === letters)) ?? []
      const path = parts.flatMap((row) => ids.get(`${row?.[0]} ${row?.[1].split('/')[0]}`) ?? [])
      return path.length === parts.length && path.length > 0 ? path : undefined
    },
  }
}

type Rows = ReadonlyMap<string, readonly (PlainRow & { readonly isVowel?: boolean })[]>

function groupRows(): Rows {
  const byLetters = new Map<string, PlainRow[]>()
  for (const row of [...CONSONANTS, ...VOWELS]) byLetters.set(row[0], [...(byLetters.get(row[0]) ?? []), row])
  return byLetters
}

/** The longest group at each letter; undefined where none fits. */
function cutPlain(word: string, byLetters: Rows): readonly Part[] | undefined {
  const parts: Part[] = []
  for (let at = 0; at < word.length; ) {
    const split = toSplit(word, at)
    if (split) return [...parts, ...split]
    const part = findPart(word, at, byLetters)
    if (!part) return undefined
    parts.push(part)
    at += part.letters.length
  }
  return parts
}

function findPart(word: string, at: number, byLetters: Rows): Part | undefined {
  const marked = `${word.slice(0, at)}|${word.slice(at)}`
  for (let length = Math.min(LONGEST_LETTERS, word.length - at); length > 0; length--) {
    const row = byLetters
      .get(word.slice(at, at + length))
      ?.find(([, , , where]) => where === undefined || where.test(marked))
    if (row) return toPart(row)
  }
  return undefined
}

const toPart = ([letters, sounds]: PlainRow): Part => ({
  letters,
  sounds: sounds.split('/'),
  isVowel: /^[aeiou]|^le$|^y$/.test(letters) && sounds !== 'Y',
})

/** `ake`, `ithe` and `age` at the end of a word; a soft g keeps its own e. */
function toSplit(word: string, at: number): readonly Part[] | undefined {
  const found = /^([aeiou])([bcdfgklmnpstvz]|th)e$/.exec(word.slice(at))
  if (!found || /[aeiou]$|[aeo]w$/.test(word.slice(0, at).replace(/qu$/, 'q'))) return undefined
  const [vowel, letters] = [found[1] as string, found[2] as string]
  const open = toPart(SPLIT.find(([name]) => name[0] === vowel) as PlainRow)
  if (letters === 'g')
    return [
      { ...open, letters: vowel },
      { letters: 'ge', sounds: ['JH'], isVowel: false },
    ]
  const sound = { c: ['S'], s: ['Z', 'S'], th: ['DH', 'TH'] }[letters]
  const [, usual] = CONSONANTS.findLast(([name]) => name === letters) as PlainRow
  return [open, { letters, sounds: sound ?? [usual], isVowel: false }, CLOSED]
}

const CLOSED: Part = { letters: 'e', sounds: [], isVowel: false }

/** Whether the word has a vowel, no two side by side, and begins as English words begin. */
function isSayable(parts: readonly Part[]): boolean {
  const first = parts.findIndex((part) => part.isVowel)
  if (first < 0 || parts.some((part, k) => part.isVowel && parts[k + 1]?.isVowel)) return false
  if (parts.some((_, k) => isOpen(parts, k))) return false
  const onset = parts.slice(0, first)
  if (onset.some(({ letters }) => letters[0] === letters[1])) return false
  const sounds = onset.map((part) => part.sounds[0]).join(' ')
  return onset.length < 2 || ONSETS.has(sounds)
}

/** A single vowel letter before one consonant and another vowel: `zibo`. Doubled letters and pairs shut it in. */
function isOpen(parts: readonly Part[], at: number): boolean {
  const [vowel, consonant, next] = parts.slice(at) as [Part, Part?, Part?]
  if (!vowel.isVowel || vowel.letters.length > 1 || !next?.isVowel) return false
  return consonant?.letters.length === 1 && consonant.letters !== 'x'
}

/** Every pairing of sounds, the first sounds first. */
function combine(parts: readonly Part[], ids: ReadonlyMap<string, number>): readonly (readonly number[])[] {
  let paths: number[][] = [[]]
  for (const part of parts) {
    const found = part.sounds.flatMap((sound) => ids.get(`${part.letters} ${sound}`) ?? [])
    const next = part === CLOSED ? [CLOSE] : found
    paths = next.flatMap((id) => paths.map((path) => [...path, id]))
  }
  return paths.slice(0, MOST)
}

/** The first vowel is strong; another is said in full too, but not the weak ends of `sofa`, `sister`, `table`, `happy` and `monkey`. */
function toStress(path: readonly number[], { rows }: RowSet): readonly (0 | 1 | 2)[] {
  const vowels = path.flatMap((id) => {
    const row = rows[id]
    return row === undefined ? [] : row.phones.filter(isVowel).map((phone) => ({ phone, letters: row.letters }))
  })
  const isWeak = ({ phone, letters }: { phone: string; letters: string }): boolean =>
    (phone === 'AH' && letters !== 'u') || phone === 'ER' || (phone === 'IY' && /^(?:e?y|ie?)$/.test(letters))
  return vowels.map((vowel, k) => (k === 0 ? 1 : isWeak(vowel) ? 0 : 2))
}
