// Tells a contraction (`can't`, `it's`) from an owner's ending (`dog's`, `dogs'`).

import { hasApostrophe, toStraight } from '../apostrophe.ts'

/** Words whose `'s` is short for `is`, `has` or `us`, and never marks an owner. */
const SHORTENED_BEFORE_S = new Set([
  'he',
  'she',
  'it',
  'that',
  'this',
  'what',
  'where',
  'there',
  'here',
  'who',
  'how',
  'when',
  'why',
  'let',
])

/** The owner before `'s` or after-`s` apostrophe: `dog` of `dog's`, `dogs` of `dogs'`; undefined for other words. */
export function findOwner(word: string): string | undefined {
  // Asked of every word of a story, and nearly none has an apostrophe.
  if (!hasApostrophe(word)) return undefined
  const straight = toStraight(word)
  const owner = /(.+)'s$/i.exec(straight)?.[1] ?? /(.+s)'$/i.exec(straight)?.[1]
  return owner === undefined || SHORTENED_BEFORE_S.has(owner.toLowerCase()) ? undefined : owner
}

/** Whether the word holds an apostrophe that stands for letters left out. */
export function isContraction(word: string): boolean {
  return hasApostrophe(word) && findOwner(word) === undefined
}

/** The whole word before what is shortened: `they` of `they've`, `would` of `wouldn't`; undefined for other words. */
export function findShortened(word: string): string | undefined {
  return isContraction(word) ? /(.+?)(?:n't|'(?:d|ll|m|re|s|ve))$/i.exec(toStraight(word))?.[1] : undefined
}
