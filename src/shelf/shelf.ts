// A shelf: books in the order in which they are read, what each brings, what comes back, and what is missing.

import { type Problem, toProblem } from '../problem/index.ts'
import { type Book, compareBooks } from './book.ts'
import { createPatternFinder, type PatternFinder } from './pattern-finder.ts'
import { type Recurrence, toPatternRecurrences, toShownSightWord, toSightRecurrences } from './recurrence.ts'
import { eachCount, type Vocabulary } from './vocabulary.ts'

interface PractisedPattern {
  /** As written. */
  readonly pattern: string
  /** Running words that have it. */
  readonly words: number
  /** Different words that have it. */
  readonly different: number
}

export interface ShelvedBook extends Omit<Book, 'counts' | 'sightWords' | 'practises'> {
  readonly different: number
  /** Different words that no earlier book has used, in order of first place. */
  readonly newWords: readonly string[]
  readonly practises: readonly PractisedPattern[]
  /** Those of them that are read by heart here or in a later book. */
  readonly newSightWords: readonly string[]
}

interface MissingSteps {
  readonly sequence: string
  /** Steps that no book is for, in order. */
  readonly steps: readonly string[]
}

export interface Shelf {
  readonly books: readonly ShelvedBook[]
  readonly sightWords: readonly Recurrence[]
  readonly patterns: readonly Recurrence[]
  readonly missingSteps: readonly MissingSteps[]
  /** Sight words that no book after the first one with them uses, though there is one. */
  readonly neverReturning: readonly string[]
  readonly problems: readonly Problem[]
}

/** Puts books in order and counts what each brings. */
export function toShelf(unsorted: readonly Book[], vocabulary: Vocabulary): Shelf {
  const books = [...unsorted].sort(compareBooks)
  const patterns = createPatternFinder(vocabulary)
  const rows = toRows(books, vocabulary, patterns)
  const sightWords = toSightRecurrences(books, vocabulary)
  const isLeft = ({ first, times }: Recurrence) =>
    first < books.length - 1 && times.every((one, at) => at <= first || one === 0)
  return {
    books: rows,
    sightWords,
    patterns: toPatternRecurrences(books, patterns),
    missingSteps: findMissingSteps(books),
    neverReturning: sightWords.filter(isLeft).map(({ what }) => what),
    problems: [...findTwins(books), ...findUnknownPatterns(books, patterns)],
  }
}

/** For every word the place of the first book that uses it, from 0. @param books in order */
export function toFirstPlaces(books: readonly Book[], vocabulary: Vocabulary): ReadonlyMap<string, number> {
  const places = new Map<string, number>()
  for (const [place, { counts }] of books.entries()) {
    for (const id of counts.ids) {
      const { key } = vocabulary.wordAt(id)
      if (!places.has(key)) places.set(key, place)
    }
  }
  return places
}

/** Books in order, with what is new in each. A sight word is one that some book of the shelf reads by heart. */
function toRows(books: readonly Book[], vocabulary: Vocabulary, patterns: PatternFinder): readonly ShelvedBook[] {
  const byHeart = new Set(books.flatMap(({ sightWords }) => sightWords))
  const used = new Set<string>()
  return books.map((book) => {
    const { counts, sightWords: _, practises, ...rest } = book
    const words = new Set(Array.from(counts.ids, (id) => vocabulary.wordAt(id).key))
    const fresh = [...words].filter((word) => !used.has(word))
    for (const word of fresh) used.add(word)
    return {
      ...rest,
      different: words.size,
      newWords: fresh.map(vocabulary.shown),
      newSightWords: fresh.filter((word) => byHeart.has(word)).map(toShownSightWord),
      practises: practises.map((written) => toPractised(written, book, vocabulary, patterns)),
    }
  })
}

function toPractised(written: string, book: Book, vocabulary: Vocabulary, patterns: PatternFinder): PractisedPattern {
  const hasIt = patterns.find(written, book)
  const different = new Set<string>()
  let words = 0
  eachCount(book.counts, (id, times) => {
    if (!hasIt?.(id)) return
    words += times
    different.add(vocabulary.wordAt(id).key)
  })
  return { pattern: written, words, different: different.size }
}

function findMissingSteps(books: readonly Book[]): readonly MissingSteps[] {
  const sequences = new Map(books.map(({ sequence }) => [sequence.name, sequence]))
  return [...sequences.values()].map(({ name, steps }) => {
    const taken = new Set(books.filter(({ sequence }) => sequence.name === name).map(({ step }) => step))
    return { sequence: name, steps: steps.map(({ id }) => id).filter((id) => !taken.has(id)) }
  })
}

function findTwins(books: readonly Book[]): readonly Problem[] {
  const byOrder = new Map<number, string[]>()
  for (const { order, path } of books) {
    if (order === undefined) continue
    const twins = byOrder.get(order)
    if (twins === undefined) byOrder.set(order, [path])
    else twins.push(path)
  }
  return [...byOrder]
    .filter(([, paths]) => paths.length > 1)
    .map(([order, [path = '', ...others]]) =>
      toProblem({
        code: 'repeated',
        path,
        message: `${path}: \`order: ${order}\` is also that of ${others.join(', ')}`,
        note: 'They stand by step, then by file name.',
      }),
    )
}

function findUnknownPatterns(books: readonly Book[], patterns: PatternFinder): readonly Problem[] {
  return books.flatMap((book) =>
    book.practises
      .filter((written) => patterns.find(written, book) === undefined)
      .map((written) =>
        toProblem({
          code: 'unknown-name',
          path: book.path,
          message: `${book.path} practises \`${written}\`, which no step of the sequence \`${book.sequence.name}\` teaches`,
        }),
      ),
  )
}
