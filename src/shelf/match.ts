// Which reader can read which book: books × readers, from words that were counted once and judged once a reader.

import type { CorrespondenceKey } from '../phonics/types.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { StoryCount, WordUse } from '../usage/count.ts'
import { toNamesFor } from '../usage/long-names.ts'
import type { ReaderJudge } from './reader-judge.ts'
import { comesWithSteps, findLessons, type Lesson, type MissingWord, toNeeds } from './teach.ts'
import type { Vocabulary } from './vocabulary.ts'

/** What one reader can read of one book. */
export interface Match {
  /** Running words. */
  readonly words: number
  readonly readable: number
  /** 0 to 1 */
  readonly share: number
  /** `nearly`: the share is reached when at most so many words or correspondences are taught first. */
  readonly kind: 'ready' | 'nearly' | 'not-yet'
  /** What to teach first; empty unless `nearly`. */
  readonly lessons: readonly Lesson[]
}

export interface MatchOptions {
  /** The share of running words from which a book is ready, 0 to 1. */
  readonly share: number
  /** The most lessons after which a book counts as nearly ready. */
  readonly mostLessons: number
}

/** A book whose words are counted and numbered. */
export interface CountedBook {
  readonly uses: readonly WordUse[]
  readonly ids: readonly number[]
  readonly words: number
  /** As written. */
  readonly names: readonly string[]
  /** Sight words that the settings of the book add. One object for all books with the same ones saves time. */
  readonly more?: ReaderExtra
}

export function toCountedBook(
  { uses, words }: StoryCount,
  vocabulary: Vocabulary,
  { names, more }: Pick<CountedBook, 'names' | 'more'>,
): CountedBook {
  return { uses, ids: uses.map((use) => vocabulary.toId(use)), words, names, ...(more && { more }) }
}

/** What one reader lacks for one book. */
export interface BookGap {
  /** Running words. */
  readonly words: number
  readonly readable: number
  readonly missing: readonly MissingWord[]
}

export function findGapOf(book: CountedBook, reader: ReaderJudge, sequence: Sequence): BookGap {
  const { uses, ids, words, names, more } = book
  const missing = new Map<
    string,
    { word: string; times: number; needs: MissingWord['needs']; comesWithSteps: boolean }
  >()
  const isTaught = toTaughtKeys(sequence)
  let unreadable = 0
  for (const [at, use] of uses.entries()) {
    const id = ids[at] ?? 0
    const verdict = reader.judgeInStory(id, toNamesFor(use, names), more)
    if (verdict.readable) continue
    unreadable += use.times
    if (use.form === 'foreign') continue
    const known = missing.get(use.key)
    if (known !== undefined) {
      known.times += use.times
      if (use.text === use.key) known.word = use.text
    } else
      missing.set(use.key, {
        word: use.text,
        times: use.times,
        needs: toNeeds(verdict, (key) => isTaught.has(key)),
        comesWithSteps: comesWithSteps(verdict),
      })
  }
  return { words, readable: words - unreadable, missing: [...missing.values()] }
}

export const toShareOf = ({ words, readable }: BookGap): number => (words === 0 ? 1 : readable / words)

export function matchBook(book: CountedBook, reader: ReaderJudge, sequence: Sequence, options: MatchOptions): Match {
  const gap = findGapOf(book, reader, sequence)
  const { words, readable, missing } = gap
  const share = toShareOf(gap)
  const result = { words, readable, share }
  if (share >= options.share) return { ...result, kind: 'ready', lessons: [] }
  const wanted = findLeast(words, options.share) - readable
  const lessons = findLessons(missing, wanted, options.mostLessons)
  return lessons === undefined ? { ...result, kind: 'not-yet', lessons: [] } : { ...result, kind: 'nearly', lessons }
}

/** The fewest readable words that make up the share, as `readable / words >= share` has it. */
export function findLeast(words: number, share: number): number {
  const least = Math.ceil(words * share)
  return (least - 1) / words >= share ? least - 1 : least
}

const taughtKeys = new WeakMap<Sequence, ReadonlySet<CorrespondenceKey>>()

/** All correspondences that some step teaches. */
function toTaughtKeys(sequence: Sequence): ReadonlySet<CorrespondenceKey> {
  let keys = taughtKeys.get(sequence)
  if (keys === undefined) {
    keys = new Set(sequence.steps.flatMap(({ adds }) => adds.correspondences.map(({ key }) => key)))
    taughtKeys.set(sequence, keys)
  }
  return keys
}
