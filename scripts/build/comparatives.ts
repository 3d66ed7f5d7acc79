// Comparatives that the dictionary lacks and that a slip would be taken for: `riper` for `ripper`, `shyer` for `shier`.

import { isVowel } from '../../src/phonics/arpabet.ts'
import { type DictionaryWord, mend } from './pronunciations.ts'
import type { WordNet } from './wordnet.ts'

const ENDINGS = [
  { letters: 'er', phones: ['ER'] },
  { letters: 'est', phones: ['IH', 'S', 'T'] },
] as const

/** Of one beat, with a silent e or a long y at the end: the only ones whose form looks like that of another word. */
const SHORT = /^[^aeiouy]*[aeiou][^aeiouy]e$|^[^aeiouy]+y$/

/** The forms that are not listed, of adjectives that people use as such. */
export function findComparatives(
  words: readonly DictionaryWord[],
  listed: ReadonlySet<string>,
  wordnet: WordNet,
): readonly DictionaryWord[] {
  const isCommon = (word: string): boolean => {
    const { adj, verb } = wordnet.posOf(word)
    return adj.tags > 0 || (adj.senses > 0 && adj.senses >= verb.senses)
  }
  const isCompared = ({ word, transcriptions }: DictionaryWord): boolean =>
    SHORT.test(word) && isCommon(word) && transcriptions.every(({ phones }) => phones.filter(isVowel).length === 1)
  return words.filter(isCompared).flatMap(({ word, transcriptions }) =>
    ENDINGS.flatMap(({ letters, phones }) => {
      const form = `${word.replace(/e$/, '')}${letters}`
      if (listed.has(form)) return []
      const said = transcriptions.map((one) =>
        mend(form, { phones: [...one.phones, ...phones], stress: [...one.stress, 0] }),
      )
      return [{ word: form, transcriptions: said }]
    }),
  )
}
