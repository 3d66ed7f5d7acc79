// One run of `match`: each book is read and counted once, and then added up for every reader.

import { type MatchedBook, toCsvMatches, toJsonMatches, toPrettyMatches } from '../../report/match.ts'
import { matchBook } from '../../shelf/index.ts'
import { createBookCounter } from '../book-counter.ts'
import { complainOf, type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { findReaders, toDay } from '../readers.ts'
import { createResources } from '../resources.ts'
import { createTextRun, toShare } from '../texts.ts'

export interface MatchOptions {
  readonly readers: string
  readonly on?: string
  readonly config?: string
  readonly share: string
  readonly teach: string
  readonly format: 'pretty' | 'json' | 'csv'
}

export async function runMatch(given: readonly string[], options: MatchOptions, io: Io): Promise<ExitCode> {
  const limits = { share: toShare(options.share), mostLessons: toMost(options.teach) }
  const day = toDay(options.on, io)
  if (!day.ok) {
    complainOf(io, day.problems)
    return 2
  }
  const resources = createResources(io)
  const { readers, problems } = await findReaders(options.readers, io, resources, { on: day.value })
  complainOf(io, problems)
  const run = createTextRun(io, options.config === undefined ? {} : { config: options.config })
  if (readers.length === 0 || run === undefined) return 2

  const counter = createBookCounter(
    readers.map(({ reader }) => reader),
    resources,
  )
  const books: MatchedBook[] = []
  await run.each(given, async (text) => {
    const { path, own } = text
    const { book } = await counter.count(text)
    const matches = counter.judges.map((judge, at) => matchBook(book, judge, readers[at]!.reader.sequence, limits))
    books.push({ path, title: own.title?.value, matches })
  })
  const report = { readers, books, share: limits.share }
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonMatches(report), null, 2)}\n`)
  else if (options.format === 'csv') io.stdout.write(toCsvMatches(report))
  else io.stdout.write(toPrettyMatches(report, { width: toWidth(io), paint: await toPaint(io) }))
  return problems.length > 0 || run.hasFailed() ? 2 : 0
}

const MOST_LESSONS = 8

function toMost(given: string): number {
  if (/^\d+$/.test(given) && Number(given) <= MOST_LESSONS) return Number(given)
  throw new Error(`--teach is a whole number from 0 to ${MOST_LESSONS}; this is \`${given}\`.`)
}
