// How sight words and patterns come back over the books that follow.

import type { Book } from './book.ts'
import type { HasPattern, PatternFinder } from './pattern-finder.ts'
import { eachCount, type PackedCounts, type Vocabulary } from './vocabulary.ts'

export interface Recurrence {
  readonly what: string
  /** The place of the book that first uses a sight word, or first practises a pattern; from 0. */
  readonly first: number
  /** Running words in each book, in order of the shelf. */
  readonly times: readonly number[]
}

/** Sight words are shown in small letters, whatever sentence they open. */
export const toShownSightWord = (key: string): string => (key === 'i' ? 'I' : key)

/** The words that some book of the shelf reads by heart, in the order in which they are first used. */
export function toSightRecurrences(books: readonly Book[], vocabulary: Vocabulary): readonly Recurrence[] {
  const byHeart = new Set(books.flatMap(({ sightWords }) => sightWords))
  const rows = new Map<string, { what: string; first: number; times: number[] }>()
  for (const [at, { counts }] of books.entries()) {
    eachCount(counts, (id, times) => {
      const { key } = vocabulary.wordAt(id)
      if (!byHeart.has(key)) return
      const row = rows.get(key) ?? { what: toShownSightWord(key), first: at, times: books.map(() => 0) }
      rows.set(key, row)
      row.times[at] = (row.times[at] ?? 0) + times
    })
  }
  return [...rows.values()]
}

/** A pattern means in all books what the first book that practises it means by it; each counts the words sounded out at its own step. */
export function toPatternRecurrences(books: readonly Book[], patterns: PatternFinder): readonly Recurrence[] {
  const rows = new Map<string, Recurrence>()
  for (const [first, book] of books.entries()) {
    for (const what of book.practises) {
      if (rows.has(what) || patterns.find(what, book) === undefined) continue
      const times = books.map((other) => sumTimes(other.counts, patterns.find(what, book, other) ?? (() => false)))
      rows.set(what, { what, first, times })
    }
  }
  return [...rows.values()]
}

function sumTimes(counts: PackedCounts, hasIt: HasPattern): number {
  let sum = 0
  eachCount(counts, (id, times) => {
    if (hasIt(id)) sum += times
  })
  return sum
}
