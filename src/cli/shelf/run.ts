// One run of `shelf`: book after book is read, counted and let go; only figures are kept.

import { createBookReader } from '../../check/read-book.ts'
import { toCsvShelf, toJsonShelf, toPrettyShelf } from '../../report/shelf.ts'
import { type Book, createVocabulary, toShelf } from '../../shelf/index.ts'
import { complainOf, type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'
import { createTextRun, toShare } from '../texts.ts'

export interface ShelfOptions {
  readonly sequence?: string
  readonly accent?: string
  readonly config?: string
  readonly share: string
  readonly format: 'pretty' | 'json' | 'csv'
}

export async function runShelf(given: readonly string[], options: ShelfOptions, io: Io): Promise<ExitCode> {
  const share = toShare(options.share)
  const run = createTextRun(io, options)
  if (run === undefined) return 2
  const vocabulary = createVocabulary()
  const read = createBookReader(createResources(io), vocabulary, share)
  const books: Book[] = []
  await run.each(given, async (text, fail) => {
    const book = await read(text, fail)
    if (book !== undefined) books.push(book)
  })
  const shelf = toShelf(books, vocabulary)
  complainOf(io, shelf.problems)
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonShelf(shelf, share), null, 2)}\n`)
  else if (options.format === 'csv') io.stdout.write(toCsvShelf(shelf))
  else if (books.length > 0)
    io.stdout.write(toPrettyShelf(shelf, share, { width: toWidth(io), paint: await toPaint(io) }))
  if (run.hasFailed()) return 2
  return shelf.problems.length > 0 ? 1 : 0
}
