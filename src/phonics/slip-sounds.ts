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
const toSkeleton = (word: string): string =>
  ALIKE.reduce((rest, [letters, alike]) => rest.replace(letters, alike), word)

/** By the words that a lexicon knows: they are sorted once. */
const sorted = new WeakMap<SlipWords, ReadonlyMap<string, readonly string[]>>()

/** Everyday words that are said as the word would be by its letters. */
export function findSoundAlike(word: string, read: Phonics['read'], slips: SlipWords): readonly string[] {
  const groups = sorted.get(slips) ?? sort(slips)
  const alike = groups.get(toSkeleton(word)) ?? []
  if (alike.length === 0) return []
  const said = new Set(toSounds(word, read).slice(0, 1))
  return alike.filter((one) => toSounds(one, read).some((sounds) => said.has(sounds)))
}

function sort(slips: SlipWords): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>()
  for (const word of slips.everyday.keys()) {
    const skeleton = toSkeleton(word)
    const group = groups.get(skeleton)
    if (group === undefined) groups.set(skeleton, [word])
    else group.push(word)
  }
  sorted.set(slips, groups)
  return groups
}

const toSounds = (word: string, read: Phonics['read']): readonly string[] =>
  read(word).pronunciations.map(({ ipa }) => ipa.replace(/[ˈˌ]/g, ''))
