// `check --readers`: judges each book for everybody of a class at once.

import { fail } from '../../problem/index.ts'
import { type ClassBook, toJsonClass, toPrettyClass } from '../../report/for-class.ts'
import { findGapOf } from '../../shelf/index.ts'
import { createBookCounter } from '../book-counter.ts'
import { complainOf, type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { findReaders, toDay } from '../readers.ts'
import { createResources } from '../resources.ts'
import { createTextRun } from '../texts.ts'
import type { CheckOptions } from './options.ts'

/** As everywhere else where a book is called ready: see docs/shelf.md. */
const SHARE = 0.9

export async function checkForClass(
  given: readonly string[],
  path: string,
  options: CheckOptions,
  io: Io,
): Promise<ExitCode> {
  const format = options.format?.[0] ?? 'pretty'
  const known = format === 'pretty' || format === 'json'
  const day = known
    ? toDay(options.on, io)
    : fail({ code: 'bad-value', message: 'With --readers, --format is pretty or json' })
  if (!day.ok) {
    complainOf(io, day.problems)
    return 2
  }
  const resources = createResources(io)
  const { readers, problems } = await findReaders(path, io, resources, { on: day.value })
  complainOf(io, problems)
  const run = createTextRun(io, options.config === undefined ? {} : { config: options.config })
  if (readers.length === 0 || run === undefined) return 2
  const counter = createBookCounter(
    readers.map(({ reader }) => reader),
    resources,
  )
  const books: ClassBook[] = []
  await run.each(given, async (text) => {
    const { path: shown, own } = text
    const { book } = await counter.count(text)
    const gaps = counter.judges.map((judge, at) => findGapOf(book, judge, readers[at]!.reader.sequence))
    books.push({ path: shown, title: own.title?.value, gaps })
  })
  const report = { readers, books, share: SHARE }
  if (format === 'json') io.stdout.write(`${JSON.stringify(toJsonClass(report), null, 2)}\n`)
  else io.stdout.write(toPrettyClass(report, { width: toWidth(io), paint: await toPaint(io) }))
  return problems.length > 0 || run.hasFailed() ? 2 : 0
}
