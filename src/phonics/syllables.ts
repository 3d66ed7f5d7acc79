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
import { cutBeforeLe, cutBetween, type Piece, toStart } from './syllable-gaps.ts'

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

const SHORT: ReadonlySet<string> = new Set(['AE', 'EH', 'IH', 'AH', 'UH'])

/** Letter places where a new syllable begins, without 0, and the stress of each syllable. */
export interface Cut {
  readonly starts: readonly number[]
  readonly stress: readonly (0 | 1 | 2)[]
}

/** @param seams where parts of the word meet, so that a syllable begins there whatever the letters */
export function cutSyllables(word: string, units: readonly RawUnit[], seams: readonly number[] = []): Cut {
  // Most words have one vowel sound, and no more to ask.
  const vowels = units.flatMap(({ phones, stress = 0 }) => phones.filter(isVowel).map(() => stress))
  if (vowels.length < 2) return { starts: [], stress: vowels }
  const pieces = units.map((unit) => ({ unit, start: startOf(unit), end: endOf(unit) }))
  const nuclei = pieces.flatMap((piece, at) => toNuclei(piece, at, pieces, word)).map(openWeak)
  const starts: number[] = []
  for (let k = 1; k < nuclei.length; k++) {
    const [left, right] = [nuclei[k - 1] as Nucleus, nuclei[k] as Nucleus]
    const seam = seams.find((at) => at > left.start && at <= right.start && at > (starts.at(-1) ?? 0))
    starts.push(seam ?? findBoundary(word, pieces, left, right))
  }
  return { starts, stress: nuclei.map((nucleus) => nucleus.stress) }
}

/** A unit has as many nuclei as vowel sounds: `ir` in `iron` has two. */
function toNuclei({ unit, start, end }: Piece, piece: number, pieces: readonly Piece[], word: string): Nucleus[] {
  // bub-ble and bub-bled, but bub-bling and wob-bly: the le is no beat of its own before a vowel.
  const isOfLe = unit.base === 'le' || isVowel(unit.phones[0] ?? '')
  const isWorn = isOfLe && unit.letters === 'l' && pieces[piece + 1]?.unit.phones.some(isVowel) === true
  if (isWorn) return []
  const vowels = unit.phones.filter(isVowel)
  const stress = unit.stress ?? 0
  return vowels.map((vowel, k) => {
    const opens = !isVowel(unit.phones[0] as string) && !/^[aeiouy]/.test(unit.letters)
    // The second vowel of `ir` in `iron` and of `ier` in `dossier` begins behind the first letter.
    const from = k === 0 ? start : start + 1
    return {
      piece,
      letters: unit.letters,
      start: from,
      end,
      stress: k === 0 ? stress : 0,
      isShort: isShort(vowel, unit, word.slice(0, start)),
      opens,
    }
  })
}

/** The i of `hospital` has a little stress in the dictionary, and closes no syllable. */
const openWeak = (nucleus: Nucleus, at: number, nuclei: readonly Nucleus[]): Nucleus =>
  nucleus.stress === 2 && nucleus.letters === 'i' && nuclei.slice(0, at).some(({ stress }) => stress === 1)
    ? { ...nucleus, isShort: false }
    : nucleus

/** The e of `hero` is written IH before r, and is long all the same. */
const isShort = (vowel: string, unit: RawUnit, before: string): boolean =>
  (SHORT.has(vowel) ||
    (vowel === 'AO' && unit.letters === 'o') ||
    // fa-ther, gua-va and au-gust have a long vowel of the same sound.
    (vowel === 'AA' && (/^ow?$/.test(unit.letters) || (unit.letters === 'a' && /(?:qu|w|h)$/.test(before))))) &&
  unit.phones.length === 1 &&
  (unit.stress ?? 0) > 0 &&
  !(vowel === 'IH' && unit.letters === 'e')

function findBoundary(word: string, pieces: readonly Piece[], left: Nucleus, right: Nucleus): number {
  const between = pieces.slice(left.piece + 1, right.piece).filter((piece) => piece.unit.phones.length > 0)
  const [before, after] = [pieces[left.piece] as Piece, pieces[right.piece] as Piece]
  const beginning = findBeginning(word, pieces, left, right)
  if (beginning !== undefined) return beginning
  if (right.opens) return toStart(after)
  if (between.length === 0) return cutAfterVowel(word, before, after, right)
  const free = between.filter((piece) => piece.start >= before.end)
  const isClosed = before.unit.spans.length > 1 && free.length === 1
  if (isClosed) return (free[0] as Piece).start
  if (isLe(after, right)) return cutBeforeLe(free, right)
  return cutBetween(free, left, right, isEnding(after, word, left, right))
}

const isLe = ({ unit }: Piece, { letters }: Nucleus): boolean =>
  letters === 'le' || letters === 're' || unit.base === 'le'

const isEnding = ({ unit }: Piece, word: string, left: Nucleus, right: Nucleus): boolean =>
  unit.kind === 'inflection' ||
  isMorning(word, left) ||
  // un-guard-ed is no form of a doing word, and ends as one.
  (right.end === word.length - 1 && /[^dt][dt]ed$/.test(word) && right.letters === 'e')

/** morn-ing is cut as if it had an ending; star-ling is not. */
const isMorning = (word: string, left: Nucleus): boolean =>
  left.letters.endsWith('r') && /^[dmnt]ing$/.test(word.slice(left.end))

interface Beginning {
  /** The letters before the cut, and which stand after it. */
  readonly form: RegExp
  /** Whether the syllable after it must be stronger than the one that it makes. */
  readonly isWeak: boolean
}

/** Heard as one piece, where the letters after it could be cut otherwise. */
const BEGINNINGS: readonly Beginning[] = [
  // mis-take, dis-cov-er
  { form: /^[dm]is(?=[^aeiou])/, isWeak: true },
  // de-stroy, de-scribe
  { form: /^de(?=s[ct])/, isWeak: true },
  // as-ton-ish, mys-te-ri-ous, sus-tain
  { form: /^[^aeiou]?[aiuy]s(?=[kpt]|c[^h])/, isWeak: true },
  // es-cape, es-tate
  { form: /^es(?=[ckpqt])/, isWeak: false },
  // o-ver-eat, un-der-arm, in-ter-act, su-per-ego
  { form: /^(?:inter|over|super|under)/, isWeak: false },
  // trans-port
  { form: /^trans(?=[mpt])/, isWeak: false },
]

/** How many letters of a beginning there are from its last vowel on. */
const LONGEST_TAIL = 3

function findBeginning(word: string, pieces: readonly Piece[], left: Nucleus, right: Nucleus): number | undefined {
  const isStronger = left.stress !== 1 && right.stress === 1
  for (const { form, isWeak } of BEGINNINGS) {
    const at = isWeak && !isStronger ? undefined : form.exec(word)?.[0].length
    if (at === undefined || at > right.start || !pieces.some(({ start }) => start === at)) continue
    // Its last vowel is the one before the cut.
    if (left.start < at && left.start >= at - LONGEST_TAIL) return at
  }
  return undefined
}

/** Two vowel units side by side part between them, but an r at the end of the first may begin the next syllable. */
function cutAfterVowel(word: string, { unit, end }: Piece, after: Piece, right: Nucleus): number {
  const letters = unit.base ?? unit.letters
  // stir-ring, whose r is doubled by the ending, but purr-ing
  if (unit.letters.endsWith('rr') && after.unit.kind === 'inflection')
    return letters.endsWith('rr') ? right.start : right.start - 1
  if (end !== right.start || !word.slice(0, end).endsWith('r')) return right.start
  const isPulled = right.stress > 0 && unit.phones.at(-1) === 'ER'
  const isLong = /^[ou]r$/.test(letters) && /^(y|i[aeou])/.test(word.slice(end))
  return isPulled || isLong || letters.endsWith('rr') ? right.start - 1 : right.start
}
