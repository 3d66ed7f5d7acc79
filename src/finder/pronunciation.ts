// A pronunciation as lists are searched by it.

import type { Pronunciation } from '../phonics/types.ts'
import type { ListPronunciation, ListUnit } from './table.ts'

/** Empty for a word that cannot be read. */
export function toListPronunciation(pronunciation: Pronunciation | undefined): ListPronunciation {
  const units = pronunciation?.units ?? []
  const stressed = units.findIndex(({ vowel, stress }) => vowel && stress === 1)
  return {
    units: units.map(({ letters, key, sound, kind, vowel }) => ({ letters, key, sound, kind, vowel })),
    stressed:
      stressed >= 0
        ? stressed
        : Math.max(
            0,
            units.findIndex(({ vowel }) => vowel),
          ),
    syllables: pronunciation?.syllables.length ?? 0,
  }
}

export const toSounds = ({ units }: ListPronunciation): string => units.map(({ sound }) => sound).join('')

/**
 * The end of a one-syllable word from its vowel on, letters and sounds: `at` of `cat`. Undefined for a longer word, and for
 * one that begins with its vowel: `at` itself heads no family.
 */
export function findRime(
  word: string,
  { units, syllables }: ListPronunciation,
): { readonly letters: string; readonly sounds: string } | undefined {
  const vowel = units.findIndex((unit) => unit.vowel)
  if (syllables !== 1 || vowel < 1) return undefined
  const onset = units.slice(0, vowel).reduce((sum, { letters }) => sum + letters.length, 0)
  return {
    letters: word.slice(onset),
    sounds: units
      .slice(vowel)
      .map(({ sound }) => sound)
      .join(' '),
  }
}

/** `CVC` for `cat`, `ship` and `cake`: letters that say one sound together count once, silent ones not at all, `qu` as one consonant. */
export const toSoundPattern = ({ units }: ListPronunciation): string =>
  toPlainPattern(units.map(toPatternLetter).join(''))

/** `Q` and a sounded `U` after it stay apart until the whole word is seen. */
export function toPatternLetter({ kind, vowel, letters }: ListUnit): string {
  if (kind === 'silent') return ''
  if (vowel) return kind === 'inflection' && letters !== 'er' ? 'VC' : 'V'
  if (letters === 'q') return 'Q'
  return letters === 'u' ? 'U' : 'C'
}

export const toPlainPattern = (pattern: string): string => pattern.replaceAll('QU', 'C').replace(/[QU]/g, 'C')

/** `CCVC` for `ship`, `CVCV` for `cake`: `y` is a vowel letter unless a vowel letter follows. */
export const toLetterPattern = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/y(?=[aeiou])/g, 'c')
    .replace(/[aeiouy]/g, 'V')
    .replace(/[^V]/g, 'C')
