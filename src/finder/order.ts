// In what order words are listed: the most useful first, by letters, or shuffled.

import { packFacts, toUseOfBits, type WordFacts } from '../words/index.ts'

export type WordOrderName = 'useful' | 'alphabetical' | 'shuffled'

export const isInflected = ({ inflection }: WordFacts): boolean => inflection !== 'none'

/**
 * The smaller, the more useful: first what small children know, base forms before plurals and the like, then by use.
 * A naming word comes before a word that is one only now and then (`hit`), where pictures are asked for.
 */
export const toUsefulness = (facts: WordFacts, forPictures: boolean): number =>
  toUsefulnessOfBits(packFacts(facts), forPictures)

/** What it costs not to be a base form. */
export const OTHER_FORM = 50

/** @param bits the facts as one number */
export function toUsefulnessOfBits(bits: number, forPictures: boolean): number {
  const { known, rarity, isInflected: isForm, isNoun } = toUseOfBits(bits)
  return (forPictures && !isNoun ? 1000 : 0) + (3 - known) * 100 + (isForm ? OTHER_FORM : 0) + rarity
}

/** The same seed gives the same order on every machine. @param seed a whole number */
export function shuffle<Item>(items: readonly Item[], seed: number): Item[] {
  const next = createRandom(seed)
  const shuffled = [...items]
  for (let at = shuffled.length - 1; at > 0; at--) {
    const other = Math.floor(next() * (at + 1))
    const item = shuffled[at] as Item
    shuffled[at] = shuffled[other] as Item
    shuffled[other] = item
  }
  return shuffled
}

/** Numbers from 0 up to 1: the generator called mulberry32, in the public domain. */
export function createRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
