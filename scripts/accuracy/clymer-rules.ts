// The generalisations of Clymer (1963) that an alignment can count: for each, whether it applies to a word and holds there.
//
// Left out: 38 to 42, on where a word is parted into syllables. The dictionary does not say, and our own cut would only
// confirm itself.

import type { RawUnit } from '../../src/phonics/raw.ts'

/** A word of the vocabulary with its units and the stress of its vowel sounds. */
export interface CountedWord {
  readonly word: string
  readonly units: readonly RawUnit[]
  readonly stress: readonly (0 | 1 | 2)[]
  readonly syllables: readonly string[]
}

/** True or false where the generalisation applies, undefined where it does not. */
export type Rule = (word: CountedWord) => boolean | undefined

const LONG: Readonly<Record<string, readonly string[]>> = {
  // A vowel before r is long where the letters' own long sound is the nearest: ear, board.
  a: ['EY'],
  e: ['IY', 'IH R'],
  i: ['AY', 'AY R'],
  o: ['OW', 'AO R'],
  u: ['UW', 'Y UW'],
  y: ['AY'],
}
const SHORT: Readonly<Record<string, readonly string[]>> = {
  a: ['AE'],
  e: ['EH'],
  i: ['IH'],
  o: ['AA', 'AO'],
  u: ['AH'],
  y: ['IH'],
}

const says = (unit: RawUnit | undefined): string => unit?.phones.join(' ') ?? ''
const isLong = (unit: RawUnit | undefined, letter: string): boolean => LONG[letter]?.includes(says(unit)) ?? false
const isShort = (unit: RawUnit | undefined, letter: string): boolean =>
  unit?.letters === letter && (SHORT[letter]?.includes(says(unit)) ?? false)

const unitAt = ({ units }: CountedWord, at: number): RawUnit | undefined =>
  units.find(({ spans }) => spans.some(([from, to]) => from <= at && at < to))

const vowelLetters = (word: string): string => word.replace(/[^aeiou]/g, '')
const isOneBeat = ({ stress }: CountedWord): boolean => stress.length === 1

/** Applies to words that match; the test is handed the unit at the first letter of the match. */
const where =
  (pattern: RegExp, test: (unit: RawUnit | undefined, word: CountedWord, at: number) => boolean): Rule =>
  (word) => {
    const found = pattern.exec(word.word)
    return found ? test(unitAt(word, found.index), word, found.index) : undefined
  }

/** Applies to words with a unit of these letters. */
const whereUnit =
  (letters: RegExp, test: (unit: RawUnit) => boolean): Rule =>
  ({ units }) => {
    const unit = units.find((one) => letters.test(one.letters))
    return unit && test(unit)
  }

/** A digraph whose first letter is long and whose second is silent: one unit with the long sound. */
const digraph = (letters: string): Rule =>
  where(new RegExp(letters), (unit) => unit?.letters.startsWith(letters) === true && isLong(unit, letters[0] ?? ''))

/** One vowel letter in a word of one syllable, where the shape is right: is it short? */
const shortIn =
  (isShape: (word: string, at: number) => boolean): Rule =>
  (word) => {
    const at = word.word.search(/[aeiou]/)
    if (!isOneBeat(word) || vowelLetters(word.word).length !== 1 || !isShape(word.word, at)) return undefined
    return isShort(unitAt(word, at), word.word[at] ?? '')
  }

const MIDDLE = (word: string, at: number) => word.length % 2 === 1 && at === (word.length - 1) / 2
const OF_FOUR = (word: string, at: number) => word.length === 4 && (at === 1 || at === 2)
const LONGER = (word: string, at: number) => word.length > 4 && !MIDDLE(word, at) && at < word.length - 1

/** A first vowel letter that a final silent e makes long. */
const finalE =
  (pattern: RegExp, applies: (word: CountedWord) => boolean): Rule =>
  (word) => {
    const found = pattern.exec(word.word)
    const end = unitAt(word, word.word.length - 1)
    if (!found || !applies(word) || (end?.letters === 'e' && end.phones.length > 0)) return undefined
    const letter = word.word[found.index] ?? ''
    return isLong(unitAt(word, found.index), letter)
  }

export const RULES: Readonly<Record<string, Rule>> = {
  '1': where(
    /[aeiou][aeiou]/,
    (unit, { word }, at) => unit?.letters.startsWith(word.slice(at, at + 2)) === true && isLong(unit, word[at] ?? ''),
  ),
  '2a': shortIn(MIDDLE),
  '2b': shortIn(OF_FOUR),
  '2c': shortIn(LONGER),
  // Clymer counted y as a vowel at the end of a word: by, fly.
  '3': (word) =>
    /^[^aeiouy]+[aeiouy]$/.test(word.word)
      ? isLong(unitAt(word, word.word.length - 1), word.word.at(-1) ?? '')
      : undefined,
  '4': finalE(/[aeiou][^aeiou]+e$/, ({ word }) => vowelLetters(word).length === 2),
  '5': where(/[aeiou]r/, (unit) => unit?.letters.includes('r') === true && !/^(AY|AW)/.test(says(unit))),
  '6-ai': digraph('ai'),
  '6-ea': digraph('ea'),
  '6-oa': digraph('oa'),
  '6-ui': digraph('ui'),
  '7': where(/ie/, (unit) => unit?.letters.startsWith('ie') === true && /^(IY|IH R)$/.test(says(unit))),
  '8': where(/ee/, (unit) => unit?.letters.startsWith('ee') === true && isLong(unit, 'e')),
  '9': finalE(/[ai][^aeiou]+e$/, ({ word }) => !/[^aeiou]le$/.test(word)),
  '10': where(/ay/, (unit) => unit?.letters === 'ay' && says(unit) === 'EY'),
  '11': where(/igh/, (unit) => unit?.letters === 'igh' && says(unit) === 'AY'),
  '12': where(/(?<=w)a/, (unit) => unit?.letters === 'a' && says(unit) === 'AA'),
  '13': whereUnit(/^i?ew$/, (unit) => says(unit) === 'UW'),
  '14': where(/ow/, (unit) => unit?.letters === 'ow' && says(unit) === 'OW'),
  '15': whereUnit(/^[aeo]w$/, (unit) => isLong(unit, unit.letters[0] ?? '')),
  '16': where(/y$/, (unit) => unit?.letters === 'y' && unit.phones.length === 1),
  '17': where(/(?<=[^aeiou])y(?![aeiou])/, (unit) => says(unit) === 'AY'),
  '18': where(/a[lwu]/, (unit) => /^(AA|AO)$/.test(says(unit))),
  '19': where(/are$/, (unit) => says(unit) === 'EH R'),
  '20': where(/ch/, (unit) => unit?.letters.includes('ch') === true && unit.phones.length === 1),
  '21': where(/ch/, (unit) => says(unit) === 'CH'),
  '22': where(/(?<!c)c[ei]/, (unit) => /\bS$/.test(says(unit))),
  '23': where(/(?<!c)c[oa]/, (unit) => says(unit) === 'K'),
  '24': where(/(?<![gn])g[ei]/, (unit) => says(unit) === 'JH'),
  '25': where(/ght/, (unit, word, at) => !/[GF]/.test(says(unit)) && says(unitAt(word, at + 2)).endsWith('T')),
  '26': where(/^kn/, (unit) => says(unit) === 'N'),
  '27': where(/^wr/, (unit) => says(unit) === 'R'),
  '28': where(
    /([^aeiou])\1/,
    (unit, word, at) =>
      unit === unitAt(word, at + 1) && (unit?.phones.filter((phone) => phone !== 'AH').length ?? 0) === 1,
  ),
  '29': where(/ck$/, (unit) => says(unit) === 'K'),
  '30': ({ stress }) => (stress.length === 2 ? stress[0] === 1 : undefined),
  '31': ({ syllables, stress }) =>
    stress.length > 1 && /^(a|in|re|ex|de|be)$/.test(syllables[0] ?? '') ? stress[0] !== 1 : undefined,
  '32': ({ word, stress }) => (stress.length === 2 && /[^aeiou]y$/.test(word) ? stress[0] === 1 : undefined),
  '33': (word) => {
    const strong = word.stress.indexOf(1)
    const syllable = word.syllables[strong] ?? ''
    if (word.stress.length < 2 || vowelLetters(syllable).length !== 1) return undefined
    const at = word.syllables.slice(0, strong).join('').length + syllable.search(/[aeiou]/)
    return isShort(unitAt(word, at), word.word[at] ?? '')
  },
  '34': (word) =>
    word.stress.length > 1 && word.stress.at(-1) === 0 && /(y|ey)$/.test(word.syllables.at(-1) ?? '')
      ? says(unitAt(word, word.word.length - 1)) === 'IY'
      : undefined,
  '35': ({ word, stress }) => (/ture$/.test(word) && stress.length > 1 ? stress.at(-1) === 0 : undefined),
  '36': ({ word, stress }) => (/tion$/.test(word) && stress.length > 1 ? stress.at(-1) === 0 : undefined),
  '37': finalE(
    /[aiou][^aeiou]+e$/,
    ({ stress, word }) => stress.length > 1 && stress.length < 4 && !/[^aeiou]le$/.test(word),
  ),
  '43': shortIn((word, at) => at < word.length),
  '44': (word) =>
    /^[^aeiouy]*e[^aeiouy]+$/.test(word.word) ? isShort(unitAt(word, word.word.indexOf('e')), 'e') : undefined,
  '45': (word) => {
    const last = word.units.at(-1)?.phones.at(-1)
    return word.stress.length > 1 && (last === 'ER' || last === 'R') ? word.stress.at(-1) === 0 : undefined
  },
}
