// The smallest set of things to teach so that enough of a book can be read: words by heart, or what letters say.

import type { CorrespondenceKey } from '../phonics/types.ts'
import type { Verdict } from '../verdict/types.ts'

/** A word that the reader cannot read yet. */
export interface MissingWord {
  readonly word: string
  /** Running words. */
  readonly times: number
  /** The correspondences that make it readable when all are taught; undefined where those alone do not. */
  readonly needs: readonly CorrespondenceKey[] | undefined
  /** What it lacks comes with the steps (length, shape, endings, later sounds), so it is no word to learn by heart. */
  readonly comesWithSteps?: boolean
}

export type Lesson =
  | { readonly kind: 'word'; readonly word: string /** Running words won. */; readonly wins: number }
  | {
      readonly kind: 'correspondence'
      readonly key: CorrespondenceKey
      /** The words that it helps to read. */
      readonly words: readonly string[]
    }

/** A search over more correspondences would take long and find little: those that can win most are looked at. */
const MOST_CORRESPONDENCES = 12

const BY_HEART: ReadonlySet<string> = new Set(['irregular', 'correspondence-untaught', 'sight-word-later'])

/** Whether only steps, and no lesson by itself, make the word readable. */
export const comesWithSteps = ({ reasons }: Verdict): boolean => !reasons.some(({ code }) => BY_HEART.has(code))

/** What would make an unreadable word readable; undefined where letters and sounds alone do not. */
export function toNeeds(
  { reasons }: Verdict,
  isTaughtAnywhere: (key: CorrespondenceKey) => boolean,
): MissingWord['needs'] {
  const keys = reasons.map(({ code, key }) =>
    code === 'irregular' || code === 'correspondence-later' || code === 'correspondence-untaught' ? key : undefined,
  )
  const known = keys.filter((key) => key !== undefined)
  return keys.length > 0 && known.length === keys.length && known.every(isTaughtAnywhere)
    ? [...new Set(known)]
    : undefined
}

/**
 * The fewest lessons that win at least so many running words; undefined where more than `most` are needed. Of sets of one
 * size, the one that wins most. Exact for the twelve correspondences that can win most.
 */
export function findLessons(
  missing: readonly MissingWord[],
  wanted: number,
  most: number,
): readonly Lesson[] | undefined {
  if (wanted <= 0) return []
  const words = [...missing].sort((one, other) => other.times - one.times)
  const keys = toCandidates(words, most)
  const masks = words.map(({ needs }) => toMask(needs, keys))
  if (countMost(words, masks, most) < wanted) return undefined
  const sets = toSets(keys.length, most)
  for (let size = 1; size <= most; size++) {
    let best: { readonly set: number; readonly won: number } | undefined
    for (const { set, count } of sets) {
      if (count > size) break
      const won = countWon(words, masks, set, size - count)
      if (won >= wanted && (best === undefined || won > best.won)) best = { set, won }
    }
    if (best !== undefined) return toLessons(words, masks, keys, best.set, size)
  }
  return undefined
}

/** No set can win more: all that the candidates win together, and the commonest of the others by heart. */
function countMost(words: readonly MissingWord[], masks: readonly number[], most: number): number {
  const { length } = words.filter((_, at) => masks[at] === -1)
  return countWon(words, masks, -1, Math.min(length, most))
}

function toCandidates(words: readonly MissingWord[], most: number): readonly CorrespondenceKey[] {
  const wins = new Map<CorrespondenceKey, number>()
  for (const { needs, times } of words) {
    if (needs === undefined || needs.length > most) continue
    for (const key of needs) wins.set(key, (wins.get(key) ?? 0) + times)
  }
  return [...wins]
    .sort((one, other) => other[1] - one[1])
    .slice(0, MOST_CORRESPONDENCES)
    .map(([key]) => key)
}

/** The needs of a word as bits of the candidates; -1 where it needs something else. */
function toMask(needs: MissingWord['needs'], keys: readonly CorrespondenceKey[]): number {
  if (needs === undefined) return -1
  return needs.reduce((mask, key) => {
    const at = keys.indexOf(key)
    return mask === -1 || at === -1 ? -1 : mask | (1 << at)
  }, 0)
}

const setsBySize = new Map<string, readonly { readonly set: number; readonly count: number }[]>()

/** All sets of so many candidates with at most so many in each, the small ones first. */
function toSets(candidates: number, most: number): readonly { readonly set: number; readonly count: number }[] {
  const name = `${candidates} ${most}`
  const known = setsBySize.get(name)
  if (known !== undefined) return known
  const all = Array.from({ length: 1 << candidates }, (_, set) => ({ set, count: countBits(set) }))
  const sets = all.filter(({ count }) => count <= most).sort((one, other) => one.count - other.count)
  setsBySize.set(name, sets)
  return sets
}

function countBits(set: number): number {
  let count = 0
  for (let rest = set; rest !== 0; rest &= rest - 1) count++
  return count
}

const isWon = (mask: number, set: number): boolean => mask !== -1 && (mask & ~set) === 0

/** Words come by falling `times`, so the first that the set does not win are the best to teach by heart. */
function countWon(words: readonly MissingWord[], masks: readonly number[], set: number, byHeart: number): number {
  let left = byHeart
  let won = 0
  for (const [at, { times }] of words.entries()) {
    if (isWon(masks[at] ?? -1, set)) won += times
    else if (left > 0) {
      left--
      won += times
    }
  }
  return won
}

function toLessons(
  words: readonly MissingWord[],
  masks: readonly number[],
  keys: readonly CorrespondenceKey[],
  set: number,
  size: number,
): readonly Lesson[] {
  const byHeart = words.filter((_, at) => !isWon(masks[at] ?? -1, set)).slice(0, size - countBits(set))
  const taught = keys.filter((_, at) => (set & (1 << at)) !== 0)
  return [
    ...taught.map((key): Lesson => {
      const helped = words.filter(({ needs }, at) => isWon(masks[at] ?? -1, set) && needs?.includes(key))
      return { kind: 'correspondence', key, words: helped.map(({ word }) => word) }
    }),
    ...byHeart.map(({ word, times }): Lesson => ({ kind: 'word', word, wins: times })),
  ]
}
