// Surnames in the dictionary that are a common word with two letters swapped: `thier`, `freind`. Whoever writes one means the word.

import { toBases } from '../../src/words/inflect.ts'
import { frequencyRank } from './frequency.ts'
import type { WordNet } from './wordnet.ts'

const COMMON = 2_000
const RARE = 15_000

/** Not in WordNet, hardly used, and one swap from a word that is much used. */
export function isSlip(word: string, wordnet: Pick<WordNet, 'isLemma'>): boolean {
  if (word.length < 5 || (frequencyRank.get(word) ?? Infinity) < RARE) return false
  const swapped = [...word].slice(1).map((letter, at) => word.slice(0, at) + letter + word[at] + word.slice(at + 2))
  const isNear = swapped.some((other) => other !== word && (frequencyRank.get(other) ?? Infinity) < COMMON)
  return isNear && ![word, ...toBases(word).map(({ base }) => base)].some((one) => wordnet.isLemma(one))
}
