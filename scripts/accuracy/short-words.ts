// Counts the short words that look like consonant, vowel, consonant and are judged as the project judged them by hand.

import { readFileSync } from 'node:fs'
import type { Accent, Phonics, Pronunciation } from '../../src/phonics/types.ts'

const WORDS = new URL('../../tests/phonics/data/short-words.tsv', import.meta.url)

const SHORT: Readonly<Record<Accent, Readonly<Record<string, string>>>> = {
  'general-american': { a: 'æ', e: 'ɛ', i: 'ɪ', o: 'ɑ', u: 'ʌ' },
  'southern-british': { a: 'æ', e: 'ɛ', i: 'ɪ', o: 'ɒ', u: 'ʌ' },
}
/** Consonants whose first-taught sound is not written with their own letter. */
const FIRST: Readonly<Record<string, string>> = { c: 'k', g: 'ɡ', j: 'dʒ', q: 'kw', x: 'ks', y: 'j' }

export interface ShortWord {
  readonly word: string
  /** By accent: whether each letter says its first-taught sound. */
  readonly isRegular: Readonly<Record<Accent, boolean>>
}

export function readShortWords(): readonly ShortWord[] {
  const lines = readFileSync(WORDS, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
  return lines.slice(1).map((line) => {
    const [word = '', american, british] = line.split('\t')
    return {
      word,
      isRegular: { 'general-american': american === 'regular', 'southern-british': british === 'regular' },
    }
  })
}

/** Whether each letter of the pronunciation is a unit with its first-taught sound. */
const isLetterByLetter = (word: string, { units }: Pronunciation, accent: Accent): boolean =>
  units.map(({ key }) => key).join() ===
  [...word].map((letter) => `${letter}=${SHORT[accent][letter] ?? FIRST[letter] ?? letter}`).join()

/** The words judged otherwise than by hand: one such pronunciation is enough to make a word readable. */
export function measureShortWords(phonics: Phonics): { readonly words: number; readonly wrong: readonly string[] } {
  const words = readShortWords()
  const wrong = words.filter(
    ({ word, isRegular }) =>
      phonics
        .read(word)
        .pronunciations.some((pronunciation) => isLetterByLetter(word, pronunciation, phonics.accent)) !==
      isRegular[phonics.accent],
  )
  return { words: words.length, wrong: wrong.map(({ word }) => word) }
}
