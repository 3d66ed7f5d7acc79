// How sight words and patterns come back over the books that follow.

import type { Book } from './book.ts'
import type { HasPattern, PatternFinder } from './pattern-finder.ts'
import { eachCount, type PackedCounts, type Vocabulary } from './vocabulary.ts'

export interface Recurrence {
  readonly what: string
  /** The place of the book that brings it, from 0. */
  readonly first: number
  /** Running words in each book, in order of the shelf. */
  readonly times: readonly number[]
}

/** @param brought the sight words that each book brings, in order of the shelf */
export function toSightRecurrences(
  brought: readonly { readonly newSightWords: readonly string[] }[],
  books: readonly Book[],
  vocabulary: Vocabulary,
): readonly Recurrence[] {
  const rows = new Map<string, { what: string; first: number; times: number[] }>()
  for (const [first, { newSightWords }] of brought.entries()) {
    for (const what of newSightWords) rows.set(what, { what, first, times: books.map(() => 0) })
  }
  for (const [at, { counts }] of books.entries()) {
    eachCount(counts, (id, times) => {
      const row = rows.get(vocabulary.wordAt(id).key)
      if (row !== undefined) row.times[at] = (row.times[at] ?? 0) + times
    })
  }
  return [...rows.values()]
}

/** A pattern means in all books what the first book that practises it means by it. */
export function toPatternRecurrences(books: readonly Book[], patterns: PatternFinder): readonly Recurrence[] {
  const rows = new Map<string, Recurrence>()
  for (const [first, book] of books.entries()) {
    for (const what of book.practises) {
      const hasIt = patterns.find(what, book)
      if (rows.has(what) || hasIt === undefined) continue
      rows.set(what, { what, first, times: books.map(({ counts }) => sumTimes(counts, hasIt)) })
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
