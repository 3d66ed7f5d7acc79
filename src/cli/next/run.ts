// One run of `next`: counts the shelf, weighs single lessons, and plans one where that is asked for.

import type { Phonics } from '../../phonics/types.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Reader } from '../../readers/index.ts'
import { type NextReport, type ShelfBook, toJsonNext, toPrettyNext } from '../../report/next.ts'
import { resolveItem, type TaughtItem } from '../../sequence/item.ts'
import { findExample } from '../../sequence/taught.ts'
import { type BookGap, findGapOf, findNext } from '../../shelf/index.ts'
import type { NextLesson } from '../../shelf/next.ts'
import { createBookCounter } from '../book-counter.ts'
import { complainOf, type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { readReaderFile, toDay } from '../readers.ts'
import { createResources } from '../resources.ts'
import { createTextRun, toShare } from '../texts.ts'
import { planLesson } from './plan.ts'
import { countUses } from './uses.ts'

export interface NextOptions {
  readonly plan?: boolean
  readonly teach?: string
  readonly on?: string
  readonly share: string
  readonly format: 'pretty' | 'json'
  readonly config?: string
}

export async function runNext(path: string, given: readonly string[], options: NextOptions, io: Io): Promise<ExitCode> {
  const share = toShare(options.share)
  const resources = createResources(io)
  const day = toDay(options.on, io)
  const read = day.ok ? await readReaderFile(path, io, resources, { on: day.value }) : day
  const run = createTextRun(io, options.config === undefined ? {} : { config: options.config })
  if (!read.ok || run === undefined) {
    if (!read.ok) complainOf(io, read.problems)
    return 2
  }
  const { reader } = read.value
  const phonics = resources.phonicsFor(reader.sequence.accent)
  const wish = toWish(options.teach, phonics)
  if (!wish.ok) {
    complainOf(io, wish.problems)
    return 2
  }
  const counter = createBookCounter([reader], resources)
  const open = reader.record?.items.filter(({ isSecure }) => !isSecure).map(({ item }) => item) ?? []
  const books: (ShelfBook & { readonly gap: BookGap })[] = []
  await run.each(given, async (text) => {
    const { path: shown, own } = text
    const { count, book } = await counter.count(text)
    const gap = findGapOf(book, counter.judges[0]!, reader.sequence)
    books.push({ path: shown, title: own.title?.value, gap, open: open.map((item) => countUses(count, item, phonics)) })
  })
  const lessons = findNext(
    books.map(({ gap }) => gap),
    share,
  )
  const wanted = wish.value ?? toItem(lessons[0], reader, phonics)
  const plan =
    (options.plan || wish.value) && wanted
      ? await planLesson({ reader, item: wanted, given, share, folderRun: options, resources }, io)
      : undefined
  const report: NextReport = { path, reader, books, share, lessons, open, plan }
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonNext(report), null, 2)}\n`)
  else io.stdout.write(toPrettyNext(report, { width: toWidth(io), paint: await toPaint(io) }))
  return run.hasFailed() ? 2 : 0
}

function toWish(given: string | undefined, phonics: Phonics): Result<TaughtItem | undefined> {
  if (given === undefined) return succeed(undefined)
  const resolved = resolveItem(given, phonics)
  return 'item' in resolved ? succeed(resolved.item) : fail(resolved.problem)
}

/** The lesson as a teacher would write it down. */
function toItem(lesson: NextLesson | undefined, { sequence }: Reader, phonics: Phonics): TaughtItem | undefined {
  if (lesson === undefined) return undefined
  if (lesson.kind === 'word') return { kind: 'word', written: lesson.what }
  const [letters = ''] = lesson.what.split('=')
  const example = findExample(sequence, lesson.what, '')
  const resolved = example === undefined ? undefined : resolveItem(`${letters} as in ${example}`, phonics)
  return resolved && 'item' in resolved ? resolved.item : undefined
}
