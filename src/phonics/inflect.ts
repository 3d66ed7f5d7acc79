// Endings: which stems a word could have, and how the units of the stem become the units of the word.
//
//   run + ing   r u n        →  r u nn ing      double
//   bake + ed   b a_e k      →  b a k ed        drop-e: the e belongs to the ending now, `a` stands for `a_e`
//   cry + es    c r y        →  c r ie s        y-to-i
//   horse + es  h or se      →  h or s es       drop-e
//   free + er   f r ee       →  f r e er       drop-e
//   panic + ed  p a n i c    →  p a n i ck ed  double: a k keeps the c hard
//   die + ing   d ie         →  d y ing       ie-to-y
//   go + es     g o          →  g oe s          the e spells the vowel, as in `toe`

import { isHiss, isVoiceless } from './arpabet.ts'
import { endOf, firstEndOf, startOf } from './places.ts'
import type { Change, RawPronunciation, RawUnit } from './raw.ts'
import type { Span } from './types.ts'

export const ENDINGS = ['s', 'es', 'ed', 'ing', 'er', 'est', "'s"] as const
type EndingLetters = (typeof ENDINGS)[number]
export const CHANGES = ['none', 'double', 'drop-e', 'y-to-i', 'ie-to-y'] as const

export interface Inflection {
  readonly stem: string
  readonly ending: EndingLetters
  readonly change: Change | 'none'
}

const isConsonantLetter = (letter: string | undefined): boolean =>
  letter !== undefined && /[b-df-hj-np-tv-xz]/.test(letter)

/** Every way to see an ending in a word, likeliest first. The stems may or may not be words. */
export function findInflections(word: string): Inflection[] {
  const found: Inflection[] = []
  const add = (stem: string, ending: EndingLetters, change: Change | 'none') => {
    if (stem.length >= 2 && /[aeiouy]/.test(stem)) found.push({ stem, ending, change })
  }
  if (word.endsWith("'s")) add(word.slice(0, -2), "'s", 'none')
  else if (word.endsWith("s'")) add(word.slice(0, -1), "'s", 'none')
  else if (/sss$/.test(word)) add(word.slice(0, -1), 's', 'none')
  else if (word.endsWith('s') && !word.endsWith('ss')) {
    if (word.endsWith('ies') && word.length > 4) add(`${word.slice(0, -3)}y`, 'es', 'y-to-i')
    if (word.endsWith('es')) {
      // `crosses` are of a cross, sooner than of a crosse.
      if (word.endsWith('sses')) add(word.slice(0, -2), 'es', 'none')
      add(word.slice(0, -1), 'es', 'drop-e')
      if (!word.endsWith('sses')) add(word.slice(0, -2), 'es', 'none')
      if (isDoubled(word, 2)) add(word.slice(0, -3), 'es', 'double')
    }
    add(word.slice(0, -1), 's', 'none')
  }
  for (const ending of ['ed', 'ing', 'er', 'est'] as const) {
    if (!word.endsWith(ending)) continue
    const rest = word.slice(0, -ending.length)
    if (ending !== 'ing' && rest.endsWith('i') && rest.length > 2) add(`${rest.slice(0, -1)}y`, ending, 'y-to-i')
    if (ending === 'ing' && rest.endsWith('y')) add(`${rest.slice(0, -1)}ie`, ending, 'ie-to-y')
    const isWhole = ENDS_WHOLE.test(rest)
    if (isWhole) add(rest, ending, 'none')
    if (isDoubled(word, ending.length)) add(rest.slice(0, -1), ending, 'double')
    add(`${rest}e`, ending, 'drop-e')
    if (!isWhole) add(rest, ending, 'none')
    if (/[aeiou].*ick$/.test(rest)) add(rest.slice(0, -1), ending, 'double')
  }
  return found
}

/**
 * A word ends so sooner than with a dropped letter: `purred` is of `purr` where that is a word and not of `pur`, and `lower` is of `low`
 * and not of a `lowe`. Not before c, g, s, v, z and th, which ask for an e themselves: `plunge`, `breathe`.
 */
const ENDS_WHOLE = /(?:ff|ll|rr|ss|zz|[lr][dkmnt]|nd|nk|nt|[cs]h|[aeo][iu][lnt]|ea[ln]|ee[lnt]|[ao]w|oo[lnt])$/

/** Whether two like consonants stand before the ending: the `nn` of `running`. */
function isDoubled(word: string, endingLength: number): boolean {
  const last = word[word.length - endingLength - 1]
  return isConsonantLetter(last) && last === word[word.length - endingLength - 2]
}

/** The units of stem + ending, or undefined where the stem's units do not allow the change. */
export function inflect(
  stem: RawPronunciation,
  stemLength: number,
  inflection: Inflection,
): RawPronunciation | undefined {
  const { ending, change } = inflection
  const sounds = stem.units.flatMap((unit) => unit.phones)
  const last = sounds.at(-1)
  const unit = stem.units.at(-1)
  if (!last || !unit) return undefined
  const phones = toEndingPhones(ending, last)
  let units: readonly RawUnit[] | undefined = toCompared(stem.units, ending)
  let letters: string = ending
  let end = stemLength
  if (change === 'double') {
    units = doubleLast(stem.units, stemLength)
    end += 1
  } else if (change === 'y-to-i') {
    const joins = ending === 'es' || ending === 'ed'
    units = changeY(stem.units, joins)
    if (joins) {
      letters = ending.slice(1)
      end += 1
    }
  } else if (change === 'ie-to-y') {
    units = changeIe(stem.units)
    end -= 1
  } else if (change === 'drop-e') {
    // cakes: the e stays with `a_e`, only s is the ending; horses and baked: the e goes to the ending.
    if (ending === 'es' && phones.length === 1) return undefined
    const dropped = dropE(stem.units, stemLength, ending === 'er' || ending === 'est')
    if (dropped) {
      units = dropped
      end -= 1
    } else if (ending === 'ed') letters = 'd'
    else units = undefined
  } else if (ending === 'es' && phones.length === 1) {
    if (unit.letters !== 'o') return undefined
    units = joinE(stem.units, stemLength)
    letters = 's'
    end += 1
  }
  if (!units) return undefined
  const vowel = phones.length > 1
  const span: Span = [end, end + letters.length]
  const tail: RawUnit = {
    letters,
    spans: [span],
    phones,
    kind: 'inflection',
    ...(vowel || ending === 'er' ? { stress: 0 as const } : {}),
    ...(change === 'none' ? {} : { change }),
  }
  return { units: [...units, tail] }
}

/** The sound of an ending after a sound: cats /s/, dogs /z/, buses /ɪz/; jumped /t/, rained /d/, hunted /ɪd/. */
function toEndingPhones(ending: EndingLetters, last: string): readonly string[] {
  switch (ending) {
    case 's':
    case 'es':
    case "'s":
      return isHiss(last) ? ['IH', 'Z'] : isVoiceless(last) ? ['S'] : ['Z']
    case 'ed':
      return last === 'T' || last === 'D' ? ['IH', 'D'] : isVoiceless(last) ? ['T'] : ['D']
    case 'ing':
      return ['IH', 'NG']
    case 'er':
      return ['ER']
    case 'est':
      return ['IH', 'S', 'T']
  }
}

/** The g of `long`, `strong` and `young` is said before -er and -est: lon·ger. */
function toCompared(units: readonly RawUnit[], ending: EndingLetters): readonly RawUnit[] {
  const last = units.at(-1)
  if (last?.letters !== 'ng' || (ending !== 'er' && ending !== 'est')) return units
  if (!/^(?:long|strong|young)$/.test(units.map((unit) => unit.letters).join(''))) return units
  const start = startOf(last)
  return [
    ...units.slice(0, -1),
    { ...last, letters: 'n', spans: [[start, start + 1]], phones: ['NG'] },
    { ...last, letters: 'g', spans: [[start + 1, start + 2]], phones: ['G'] },
  ]
}

function doubleLast(units: readonly RawUnit[], length: number): readonly RawUnit[] | undefined {
  const last = units.at(-1) as RawUnit
  // The r of `stir` belongs to its vowel: st·irr·ed.
  if (!/^(?:.|[aeiou]r)$/.test(last.letters) || firstEndOf(last) !== length) return undefined
  const start = startOf(last)
  const more = last.letters === 'c' ? 'k' : last.letters.at(-1)
  return [
    ...units.slice(0, -1),
    { ...last, letters: `${last.letters}${more}`, base: last.letters, spans: [[start, length + 1]] },
  ]
}

function changeY(units: readonly RawUnit[], joins: boolean): readonly RawUnit[] | undefined {
  const last = units.at(-1) as RawUnit
  if (last.letters !== 'y') return undefined
  const start = startOf(last)
  return [
    ...units.slice(0, -1),
    { ...last, letters: joins ? 'ie' : 'i', base: 'y', spans: [[start, start + (joins ? 2 : 1)]] },
  ]
}

function changeIe(units: readonly RawUnit[]): readonly RawUnit[] | undefined {
  const last = units.at(-1) as RawUnit
  if (last.letters !== 'ie') return undefined
  const start = startOf(last)
  return [...units.slice(0, -1), { ...last, letters: 'y', base: 'ie', spans: [[start, start + 1]] }]
}

function joinE(units: readonly RawUnit[], length: number): readonly RawUnit[] {
  const last = units.at(-1) as RawUnit
  return [...units.slice(0, -1), { ...last, letters: 'oe', spans: [[length - 1, length + 1]] }]
}

/** The units without the stem's final e; undefined where that e is not silent (`free`, `tie`), unless the two of freer meet. */
function dropE(units: readonly RawUnit[], length: number, isCompared: boolean): readonly RawUnit[] | undefined {
  const at = units.findIndex((unit) => endOf(unit) === length)
  const unit = units[at] as RawUnit
  if (unit.letters === 'e') return unit.phones.length === 0 ? units.filter((_, k) => k !== at) : undefined
  if (unit.letters.includes('_')) {
    const letters = unit.letters.slice(0, unit.letters.indexOf('_'))
    return replace(units, at, { ...unit, letters, base: unit.letters, spans: unit.spans.slice(0, -1) })
  }
  const isVowelTeam = /^[aeiouy]+$/.test(unit.letters)
  const isMet = isCompared && /^(?:ee|ue)$/.test(unit.letters)
  if ((isVowelTeam && !isMet) || !unit.letters.endsWith('e')) return undefined
  const start = startOf(unit)
  const shared = {
    ...unit,
    letters: unit.letters.slice(0, -1),
    base: unit.letters,
    spans: [[start, length - 1]] as const,
  }
  return replace(units, at, shared)
}

const replace = (units: readonly RawUnit[], at: number, unit: RawUnit): readonly RawUnit[] =>
  units.map((old, k) => (k === at ? unit : old))
