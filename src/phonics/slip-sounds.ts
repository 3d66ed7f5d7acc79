// Words of children's books that sound as a misspelt one does: `says` for `sez`, `school` for `scool`.

import type { SlipWords } from './lexicon/slip-words.ts'
import type { Phonics } from './types.ts'

/** How groups of letters that say one sound are written alike, before vowels are left out. In the order in which they are tried. */
const ALIKE: readonly (readonly [letters: RegExp, alike: string])[] = [
  [/[^a-z]|(?<=i)gh/g, ''],
  [/^kn/, 'n'],
  [/^wr/, 'r'],
  [/sch/g, 'sk'],
  [/tch/g, 'ch'],
  [/dge/g, 'j'],
  [/wh/g, 'w'],
  [/ph/g, 'f'],
  [/qu/g, 'kw'],
  [/ck/g, 'k'],
  [/c(?=[eiy])|z/g, 's'],
  [/c(?!h)/g, 'k'],
  [/x/g, 'ks'],
  [/^[aeiouy]+/, 'V'],
  [/[aeiouyw]+$|(?<=.)[aeiouyw]+/g, ''],
  [/(.)\1+/g, '$1'],
]

/** The consonants of a word, those of like sound alike: only words of one skeleton are read and compared. */
export const toSkeleton = (word: string): string =>
  ALIKE.reduce((rest, [letters, alike]) => rest.replace(letters, alike), word)

/** Everyday words that are said as the word would be by its letters. */
export function findSoundAlike(word: string, read: Phonics['read'], slips: SlipWords): readonly string[] {
  const alike = slips.alike(toSkeleton(word))
  if (alike.length === 0) return []
  const said = new Set(toSounds(word, read).slice(0, 1))
  return alike.filter((one) => toSounds(one, read).some((sounds) => said.has(sounds)))
}

const toSounds = (word: string, read: Phonics['read']): readonly string[] =>
  read(word).pronunciations.map(({ ipa }) => ipa.replace(/[ˈˌ]/g, ''))
