// Where the next syllable begins among the consonants between two vowels. Common practice, no source.

import { isVowel } from './arpabet.ts'
import type { RawUnit } from './raw.ts'

export interface Piece {
  readonly start: number
  readonly end: number
  readonly unit: RawUnit
}

/** What is asked of the vowel before the consonants. */
interface Left {
  readonly letters: string
  readonly stress: 0 | 1 | 2
  readonly isShort: boolean
}

/** And of the one behind them. */
interface Right {
  readonly start: number
  readonly letters: string
  readonly stress: 0 | 1 | 2
}

const ONSETS: ReadonlySet<string> = new Set(
  (
    'B L,B R,D R,F L,F R,G L,G R,K L,K R,K W,P L,P R,S K,S L,S M,S N,S P,S T,S W,T R,T W,SH R,TH R,' +
    'S K R,S P L,S P R,S T R,S K W'
  ).split(','),
)

/** Letters that say one sound or run together, and are parted all the same behind the first. */
const TORN: ReadonlySet<string> = new Set([
  'bt T', // sub-tle
  'cqu K', // lac-quer
  'cqu K W', // ac-quire
  'ft F', // of-ten
  'pb B', // cup-board
  'ph P', // shep-herd
  'sc S', // mus-cle, as-cend
  'ssi SH', // rus-sian
  'st S', // lis-ten, cas-tle
  'xc K S', // ex-cite
  'xh G Z', // ex-haust
  'xi K SH', // anx-ious
])

const isGlide = ({ unit }: Piece): boolean => unit.letters === 'i' && unit.phones.join() === 'Y'

const isTorn = ({ unit }: Piece): boolean => TORN.has(`${unit.letters} ${unit.phones.join(' ')}`)

const isDouble = ({ unit }: Piece): boolean => unit.letters.length === 2 && unit.letters[0] === unit.letters[1]

/** Doubled by an ending, as in run-ning; the ll of call-ing was there before. */
const isDoubledByEnding = ({ unit }: Piece): boolean => unit.base?.length === 1

export function cutBeforeLe(free: readonly Piece[], right: { readonly start: number }): number {
  const last = free.at(-1)
  if (!last) return right.start
  if (isDouble(last) || isTorn(last)) return last.start + 1
  return last.unit.letters === 'ck' ? right.start : last.start
}

/** @param isEnding the vowel behind them begins an ending */
export function cutBetween(free: readonly Piece[], left: Left, right: Right, isEnding: boolean): number {
  const [first, second] = free
  if (!first) return right.start
  const last = free.at(-1) as Piece
  if (isTorn(last)) return last.start + 1
  if (!second) return cutAtOne(first, left, right, isEnding)
  // mil-lion and for-nia, where the i is of what follows; un-ion and jun-ior keep the one n.
  if (isGlide(last) && (free.length > 2 || isDouble(first)))
    return cutBetween(free.slice(0, -1), left, { ...right, start: last.start, letters: `i${right.letters}` }, isEnding)
  const isHushed = /^i(o|a)/.test(right.letters) && /^[SZ]H$/.test(last.unit.phones.at(-1) ?? '')
  if (isHushed && /^[sc]$/.test(last.unit.letters)) return last.start
  // sev-eral, choc-olate: a vowel that is not said stands before the r or l.
  const isWorn = second.unit.letters === 'r' && first.unit.letters === 've'
  if (left.isShort && isWorn) return first.start + 1
  if (left.isShort && first.end < second.start && /^[lr]$/.test(second.unit.letters)) return first.end
  // wob-bly and twin-kly, whose l says its le as it stood
  if (last.unit.base === undefined && last.unit.letters === 'l' && isVowel(last.unit.phones[0] ?? '')) {
    const isClosed = left.isShort && free.length === 2 && !isDouble(first)
    return isClosed ? last.start : cutBeforeLe(free.slice(0, -1), last)
  }
  // cud-dly and rat-tly, as bub-bly, but odd-ly
  if (first.start > 1 && /^(dd|tt|zz)$/.test(first.unit.letters) && isLy(free, right)) return first.start + 1
  return findOpener(free) ?? (isEnding ? cutBeforeEnding(free, right) : cutBySound(free, left))
}

const isLy = (free: readonly Piece[], { letters }: Right): boolean =>
  free.length === 2 && free[1]?.unit.letters === 'l' && letters === 'y'

function cutAtOne(only: Piece, left: Left, right: Right, isEnding: boolean): number {
  const { letters } = only.unit
  // spe-cial, o-cean, pa-tient, pi-geon: the pair opens the last syllable; so does the y of be-yond.
  if (isOpening(only, right) || letters === 'y') return only.start
  if (isDouble(only)) return isEnding && !isDoubledByEnding(only) ? right.start : only.start + 1
  // The er of op-er-a and lib-er-al is one piece.
  const isWeakEr = letters === 'r' && left.letters === 'e' && left.stress === 0 && right.stress !== 1
  // fail-ure, ten-ure, fig-ure
  const isUre = right.letters === 'ure' && /^[gln]$/.test(letters)
  // rhyth-m, pris-m
  const isHummed = right.letters === 'm'
  const stays = isEnding || isHummed || left.isShort || letters === 'x' || letters === 'ck' || isWeakEr || isUre
  return stays ? right.start : only.start
}

/** Where something ends or begins a syllable whatever stands beside it. */
function findOpener(free: readonly Piece[]): number | undefined {
  for (const [k, piece] of free.entries()) {
    // hand-writ-ing, play-wright, un-known
    if (/^(?:kn|wh|wr)$/.test(piece.unit.letters)) return piece.start
    // fierce-ly, else-where, house-work: the e says nothing, and belongs to what is before it.
    if (k < free.length - 1 && /^[cgsvz]e$/.test(piece.unit.letters)) return piece.end
    // dif-fer-ent, where its first e is not said
    if (k < free.length - 1 && /^(.)\1[eo]$/.test(piece.unit.letters)) return piece.start + 1
  }
  return undefined
}

function cutBeforeEnding(free: readonly Piece[], right: Right): number {
  const last = free.at(-1) as Piece
  // drib-bling, as drib-ble
  if (last.unit.base === 'le') return cutBeforeLe(free.slice(0, -1), last)
  return right.start
}

/** As many consonants as can begin a word go on; a short vowel keeps one. */
function cutBySound(free: readonly Piece[], left: Left): number {
  const from = left.isShort || free.length > 2 ? 1 : 0
  for (let k = from; k < free.length; k++) {
    const onset = free.slice(k).flatMap((piece) => piece.unit.phones)
    if (onset.length > 1 && !ONSETS.has(onset.join(' '))) continue
    const [before, piece] = [free[k - 1], free[k] as Piece]
    // ad-dress, mat-tress
    return before && isDouble(before) && isLiquidPair(before, piece) ? before.start + 1 : toStart(piece)
  }
  return (free.at(-1) as Piece).start
}

/** A stop and the l or r that is said with it: `tr`, `ddr`, `ppl`. */
const isLiquidPair = (stop: Piece, { unit }: Piece): boolean =>
  /^[lr]$/.test(unit.letters) &&
  ONSETS.has([...stop.unit.phones, ...unit.phones].join(' ')) &&
  stop.unit.letters !== 'ss'

const isOpening = ({ unit }: Piece, right: Right): boolean =>
  (/^(?:c[ei]|ti|si|sci)$/.test(unit.letters) && /^[SZC]H$/.test(unit.phones[0] ?? '')) ||
  (unit.letters === 'ge' && right.letters.startsWith('o')) ||
  (/^i(o|a)/.test(right.letters) && /^[SZ]H$/.test(unit.phones.at(-1) ?? '') && /^[sc]$/.test(unit.letters))

/** Doubled letters part even inside a cluster or a long ending: `ad-dress`, `mis-sion`. */
export const toStart = (piece: Piece): number =>
  isDouble(piece) || piece.unit.letters === 'ssion' ? piece.start + 1 : piece.start
