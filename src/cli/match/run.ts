// One run of `match`: each book is read and counted once, and then added up for every reader.

import { type MatchedBook, toCsvMatches, toJsonMatches, toPrettyMatches } from '../../report/match.ts'
import type { ReaderExtra } from '../../sequence/reader.ts'
import { createReaderJudge, createVocabulary, matchBook, toCountedBook } from '../../shelf/index.ts'
import { countText } from '../../usage/count-text.ts'
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

  const vocabulary = createVocabulary()
  const judges = readers.map(({ reader }) =>
    createReaderJudge(resources.phonicsFor(reader.sequence.accent), reader.knowledge, vocabulary),
  )
  const isMixed = (text: string): boolean => judges.some((judge) => judge.isMixed(text))
  const toMore = createExtras()
  const books: MatchedBook[] = []
  await run.each(given, async ({ path, own, story, names, sightWords }) => {
    const count = await countText(story, names, isMixed, resources)
    const book = toCountedBook(count, vocabulary, { names, more: toMore(sightWords) })
    const matches = judges.map((judge, at) => matchBook(book, judge, readers[at]!.reader.sequence, limits))
    books.push({ path, title: own.title?.value, matches })
  })
  const report = { readers, books, share: limits.share }
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonMatches(report), null, 2)}\n`)
  else if (options.format === 'csv') io.stdout.write(toCsvMatches(report))
  else io.stdout.write(toPrettyMatches(report, { width: toWidth(io), paint: await toPaint(io) }))
  return problems.length > 0 || run.hasFailed() ? 2 : 0
}

/** One object for each list of sight words, so that what is known with it is summed once. */
function createExtras(): (sightWords: readonly string[]) => ReaderExtra {
  const known = new Map<string, ReaderExtra>()
  return (sightWords) => {
    const name = sightWords.join('\n')
    const extra = known.get(name) ?? { sightWords }
    known.set(name, extra)
    return extra
  }
}

const MOST_LESSONS = 8

function toMost(given: string): number {
  if (/^\d+$/.test(given) && Number(given) <= MOST_LESSONS) return Number(given)
  throw new Error(`--teach is a whole number from 0 to ${MOST_LESSONS}; this is \`${given}\`.`)
}
