// Cuts a word into syllables as teachers do: rab-bit, pic-nic, ti-ger, ta-ble, pock-et, jump-ing.
//
//   doubled letters part        rab|bit     a single consonant closes a short vowel      riv|er
//   ck, sh, th … stay together  pock|et     and opens the next syllable after a long one  ti|ger
//   two consonants part         pic|nic     more: the next syllable takes what can begin a word  mon|ster
//
//   an r sounds with the next vowel where the word leans on that  gi|raffe, a|round, and in  sto|ry, hur|ry
//
// Common practice, no source. A word has as many syllables as it has vowel sounds.

import { isVowel } from './arpabet.ts'
import { endOf, startOf } from './places.ts'
import type { RawUnit } from './raw.ts'

interface Piece {
  readonly start: number
  readonly end: number
  readonly unit: RawUnit
}

interface Nucleus {
  /** Place of the unit among the pieces. */
  readonly piece: number
  /** Where its vowel letters begin and end in the word. */
  readonly start: number
  readonly end: number
  readonly stress: 0 | 1 | 2
  readonly isShort: boolean
  /** The letters of its unit. */
  readonly letters: string
  /** The unit says consonants before its vowel (`tion`), so a syllable begins with it. */
  readonly opens: boolean
}

const SHORT: ReadonlySet<string> = new Set(['AE', 'EH', 'IH', 'AH', 'UH', 'AA'])

const ONSETS: ReadonlySet<string> = new Set(
  (
    'B L,B R,D R,F L,F R,G L,G R,K L,K R,K W,P L,P R,S K,S L,S M,S N,S P,S T,S W,T R,T W,SH R,TH R,' +
    'S K R,S P L,S P R,S T R,S K W'
  ).split(','),
)

/** Letter places where a new syllable begins, without 0, and the stress of each syllable. */
export interface Cut {
  readonly starts: readonly number[]
  readonly stress: readonly (0 | 1 | 2)[]
}

export function cutSyllables(word: string, units: readonly RawUnit[]): Cut {
  const pieces = units.map((unit) => ({ unit, start: startOf(unit), end: endOf(unit) }))
  const nuclei = pieces.flatMap(toNuclei)
  const starts: number[] = []
  for (let k = 1; k < nuclei.length; k++) {
    starts.push(findBoundary(word, pieces, nuclei[k - 1] as Nucleus, nuclei[k] as Nucleus))
  }
  return { starts, stress: nuclei.map((nucleus) => nucleus.stress) }
}

/** A unit has as many nuclei as vowel sounds: `ir` in `iron` has two. */
function toNuclei({ unit, start, end }: Piece, piece: number): Nucleus[] {
  // dribble, but dribbling: the le is no beat of its own before an ending.
  if (unit.base === 'le' && unit.letters === 'l') return []
  const vowels = unit.phones.filter(isVowel)
  const stress = unit.stress ?? 0
  return vowels.map((vowel, k) => {
    const opens = k === 0 && !isVowel(unit.phones[0] ?? '') && !/^[aeiouy]/.test(unit.letters)
    // The second vowel of `ir` in `iron` and of `ier` in `dossier` begins behind the first letter.
    const from = k === 0 ? start : start + 1
    return {
      piece,
      letters: unit.letters,
      start: from,
      end: k === 0 && vowels.length > 1 ? start + 1 : end,
      stress: k === 0 ? stress : 0,
      isShort: isShort(vowel, unit),
      opens,
    }
  })
}

/** The e of `hero` is written IH before r, and is long all the same. */
const isShort = (vowel: string, unit: RawUnit): boolean =>
  (SHORT.has(vowel) || (vowel === 'AO' && unit.letters === 'o')) &&
  unit.phones.length === 1 &&
  (unit.stress ?? 0) > 0 &&
  !(vowel === 'IH' && unit.letters === 'e')

function findBoundary(word: string, pieces: readonly Piece[], left: Nucleus, right: Nucleus): number {
  if (left.piece === right.piece) return right.start
  const hyphen = word.lastIndexOf('-', right.start)
  if (hyphen >= left.end) return hyphen + 1
  const between = pieces.slice(left.piece + 1, right.piece).filter((piece) => piece.unit.phones.length > 0)
  const [before, after] = [pieces[left.piece] as Piece, pieces[right.piece] as Piece]
  const isLe = right.letters === 'le' || right.letters === 're'
  if (left.stress !== 1 && right.stress === 1 && isPrefix(word, pieces, left, right)) return PREFIX_LENGTH
  if (right.opens) return toStart(after)
  if (between.length === 0) return cutAfterVowel(word, before, right)
  const free = between.filter((piece) => piece.start >= before.end)
  const isClosed = before.unit.spans.length > 1 && free.length === 1
  const at = isClosed
    ? (free[0] as Piece).start
    : isLe
      ? cutBeforeLe(free, right)
      : cutBetween(free, left, right, after.unit.kind === 'inflection' || isMorning(word, left, right))
  // The silent e of `home` in `homework` stays with its syllable.
  return Math.max(at, free.length < between.length ? Math.min(before.end, right.start) : 0)
}

/** morn-ing is cut as if it had an ending; star-ling is not. */
const isMorning = (word: string, left: Nucleus, right: Nucleus): boolean =>
  left.letters.endsWith('r') && /^[dmnt]ing$/.test(word.slice(left.end)) && right.letters === 'i'

const PREFIX_LENGTH = 3

/** mis-take and dis-cov-er: mis and dis are heard as one piece where the next syllable is the strong one. */
function isPrefix(word: string, pieces: readonly Piece[], left: Nucleus, right: Nucleus): boolean {
  if (left.start !== 1 || !/^[dm]is[^aeiouysh]/.test(word) || right.start <= PREFIX_LENGTH) return false
  return pieces.some((piece) => piece.start === PREFIX_LENGTH)
}

/** Two vowel units side by side part between them, but an r at the end of the first may begin the next syllable. */
function cutAfterVowel(word: string, { unit, end }: Piece, right: Nucleus): number {
  const letters = unit.base ?? unit.letters
  if (end !== right.start || !word.slice(0, end).endsWith('r')) return right.start
  const isPulled = right.stress > 0 && unit.phones.at(-1) === 'ER'
  const isLong = /^[ou]r$/.test(letters) && /^(y|i[aeou])/.test(word.slice(end))
  return isPulled || isLong || letters.endsWith('rr') ? right.start - 1 : right.start
}

const isDouble = ({ unit }: Piece): boolean => unit.letters.length === 2 && unit.letters[0] === unit.letters[1]

function cutBeforeLe(free: readonly Piece[], right: { readonly start: number }): number {
  const last = free.at(-1)
  if (!last) return right.start
  // cas-tle: the silent t begins the last syllable.
  if (isDouble(last) || last.unit.letters === 'st') return last.start + 1
  return last.unit.letters === 'ck' ? right.start : last.start
}

function cutBetween(free: readonly Piece[], left: Nucleus, right: Nucleus, isEnding: boolean): number {
  const [first, second] = free
  if (!first) return right.start
  // spe-cial, o-cean, pa-tient, pi-geon: the pair opens the last syllable.
  if (!second && isOpening(first, right)) return first.start
  if (
    /^i(o|a)/.test(right.letters) &&
    /^[SZ]H$/.test(free.at(-1)?.unit.phones.at(-1) ?? '') &&
    /^[sc]$/.test(free.at(-1)?.unit.letters ?? '')
  ) {
    return (free.at(-1) as Piece).start
  }
  if (!second) {
    if (isDouble(first)) return first.start + 1
    const stays = isEnding || left.isShort || first.unit.letters === 'x' || first.unit.letters === 'ck'
    return stays ? right.start : first.start
  }
  if (isEnding) {
    const last = free.at(-1) as Piece
    // drib-bling, as drib-ble
    if (last.unit.base === 'le') return cutBeforeLe(free.slice(0, -1), last)
    return isDouble(last) ? last.start + 1 : right.start
  }
  const from = left.isShort || free.length > 2 ? 1 : 0
  for (let k = from; k < free.length; k++) {
    const onset = free.slice(k).flatMap((piece) => piece.unit.phones)
    if (onset.length === 1 || ONSETS.has(onset.join(' '))) return toStart(free[k] as Piece)
  }
  return (free.at(-1) as Piece).start
}

const isOpening = ({ unit }: Piece, right: Nucleus): boolean =>
  (/^(?:c[ei]|ti|si|sci|xi)$/.test(unit.letters) && /^[SZC]H$/.test(unit.phones[0] ?? '')) ||
  (unit.letters === 'ge' && right.letters.startsWith('o'))

/** Doubled letters part even inside a cluster or a long ending: `ad-dress`, `mis-sion`. */
const toStart = (piece: Piece): number =>
  isDouble(piece) || piece.unit.letters === 'ssion' ? piece.start + 1 : piece.start
