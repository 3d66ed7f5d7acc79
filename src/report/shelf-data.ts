// The shelf for other programs: one JSON document, or a table with a row a book.

import type { Shelf, ShelvedBook } from '../shelf/index.ts'
import { toCsv, toShareFigure } from './csv.ts'
import { toHeldFields } from './held-back.ts'
import { toProblemFields } from './problems.ts'

const SHELF_SCHEMA = 1

/** Described by schemas/shelf.schema.json. */
export function toJsonShelf(shelf: Shelf, share: number) {
  const { books, sightWords, patterns, missingSteps, neverReturning, problems } = shelf
  const toReturns = (rows: Shelf['sightWords'], name: 'word' | 'pattern') =>
    rows.map(({ what, first, times }) => ({ [name]: what, firstBook: first + 1, times }))
  return {
    schema: SHELF_SCHEMA,
    share,
    books: books.map(toJsonBook),
    sightWords: toReturns(sightWords, 'word'),
    patterns: toReturns(patterns, 'pattern'),
    missing: { steps: missingSteps, sightWords: neverReturning },
    problems: problems.map(toProblemFields),
  }
}

function toJsonBook(book: ShelvedBook, at: number) {
  return {
    place: at + 1,
    path: book.path,
    title: book.title ?? null,
    order: book.order ?? null,
    sequence: book.sequence.name,
    accent: book.sequence.accent,
    step: book.step ?? null,
    pages: book.pages,
    words: book.words,
    different: book.different,
    newWords: book.newWords,
    readableShare: book.share ?? null,
    earliestStep: book.earliest.step,
    heldBackBy: book.heldBackBy.map(toHeldFields),
    practises: book.practises,
    newSightWords: book.newSightWords,
  }
}

export function toCsvShelf({ books }: Shelf): string {
  const head = [
    'place',
    'path',
    'title',
    'order',
    'sequence',
    'step',
    'pages',
    'words',
    'different words',
    'new words',
    'readable share',
    'earliest step',
    'patterns practised',
    'sight words first met',
  ]
  const rows = books.map((book, at) => [
    at + 1,
    book.path,
    book.title,
    book.order,
    book.sequence.name,
    book.step,
    book.pages,
    book.words,
    book.different,
    book.newWords.length,
    book.share === undefined ? undefined : toShareFigure(book.share),
    book.earliest.step ?? 'beyond the last step',
    book.practises.map(({ pattern, words, different }) => `${pattern}: ${words} (${different} different)`).join('; '),
    book.newSightWords.join(' '),
  ])
  return toCsv([head, ...rows])
}
