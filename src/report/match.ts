// What `match` prints: books × readers, and for each reader what is ready, what is nearly ready and what to teach first.

import type { Reader } from '../readers/index.ts'
import { findExample } from '../sequence/taught.ts'
import type { Lesson, Match } from '../shelf/index.ts'
import { READER_CAUTION } from './caution.ts'
import { toCsv, toShareFigure } from './csv.ts'
import type { Paint } from './paint.ts'
import { toPercentOf } from './share.ts'
import { toColumns, toCount, toCut, toList, toPercent, toPrintable, wrap } from './text.ts'

const MATCH_SCHEMA = 1

export interface MatchedBook {
  /** As shown to people. */
  readonly path: string
  readonly title: string | undefined
  /** One for each reader, in their order. */
  readonly matches: readonly Match[]
}

export interface MatchReport {
  readonly readers: readonly { readonly path: string; readonly reader: Reader }[]
  readonly books: readonly MatchedBook[]
  /** The share that was asked for, 0 to 1. */
  readonly share: number
}

interface View {
  readonly width: number
  readonly paint: Paint
}

/** How many books are named for a reader where there are more. */
const MOST_BOOKS = 10

export function toPrettyMatches(report: MatchReport, view: View): string {
  const parts = [
    ...toTables(report, view),
    ...report.readers.flatMap((_, at) => [...toReaderLines(report, at, view), '']),
    ...wrap(READER_CAUTION, view.width),
  ]
  return `${parts.join('\n')}\n`
}

/** As many readers side by side as fit; a table more for the others. */
function toTables({ readers, books, share }: MatchReport, { width, paint }: View): readonly string[] {
  const label = Math.min(30, Math.max(4, ...books.map((book) => toLabel(book).length)))
  const fit = Math.max(1, Math.floor((width - label - 6) / 7))
  const lines = [
    ...wrap(
      `Share of the running words that each reader can read. * marks ${toPercent(share)} and more: ready now.`,
      width,
    ),
  ]
  for (let from = 0; from < readers.length; from += fit) {
    const block = readers.slice(from, from + fit)
    lines.push(
      ...block.flatMap(({ reader }, at) =>
        wrap(`${from + at + 1} = ${toPrintable(reader.name)} (${reader.step})`, width - 2).map((line) => `  ${line}`),
      ),
    )
    const rows = books.map((book) => [
      toCut(toLabel(book), label),
      ...book.matches
        .slice(from, from + fit)
        .map(({ share: found, kind }) => `${toPercentOf(found, share)}${kind === 'ready' ? ' *' : '  '}`),
    ])
    const head = ['book', ...block.map((_, at) => `${from + at + 1}  `)]
    const [first = '', ...body] = toColumns([head, ...rows], ['left', ...block.map(() => 'right' as const)])
    lines.push(paint.quiet(first), ...body, '')
  }
  return lines
}

function toReaderLines({ readers, books, share }: MatchReport, at: number, { width, paint }: View): readonly string[] {
  const found = readers[at]
  if (found === undefined) return []
  const { reader } = found
  const { ready, nearly, later } = toSorted(books, at)
  const lines = [
    ...(ready.length === 0
      ? ['Ready now: none.']
      : [`Ready now: ${toShort(ready.map(({ book, match }) => `${toLabel(book)} (${toPercent(match.share)})`))}.`]),
    ...nearly
      .slice(0, MOST_BOOKS)
      .map(
        ({ book, match }) =>
          `Nearly ready: ${toLabel(book)} (${toPercentOf(match.share, share)}). Teach first: ${toList(match.lessons.map((one) => toLesson(one, reader)))}.`,
      ),
    ...(nearly.length > MOST_BOOKS ? [`${nearly.length - MOST_BOOKS} more are nearly ready.`] : []),
    ...(later.length === 0 ? [] : [`Not yet: ${toCount(later.length, 'book')}.`]),
  ]
  return [paint.strong(`${toPrintable(reader.name)}, at ${reader.step}`), ...lines.flatMap((line) => hang(line, width))]
}

const hang = (line: string, width: number): string[] =>
  wrap(line, width - 4).map((part, at) => (at === 0 ? `  ${part}` : `    ${part}`))

/** Ready: the best share first. Nearly ready: the fewest lessons first, then the best share. */
function toSorted(books: readonly MatchedBook[], at: number) {
  const all = books.flatMap((book) => {
    const match = book.matches[at]
    return match === undefined ? [] : [{ book, match }]
  })
  const byShare = [...all].sort((one, other) => other.match.share - one.match.share)
  const of = (kind: Match['kind']) => byShare.filter(({ match }) => match.kind === kind)
  const nearly = of('nearly').sort((one, other) => one.match.lessons.length - other.match.lessons.length)
  return { ready: of('ready'), nearly, later: of('not-yet') }
}

function toShort(items: readonly string[]): string {
  return items.length <= MOST_BOOKS
    ? toList(items)
    : `${items.slice(0, MOST_BOOKS).join(', ')} and ${items.length - MOST_BOOKS} more`
}

function toLesson(lesson: Lesson, { sequence }: Reader): string {
  if (lesson.kind === 'word') return `the word ${toPrintable(lesson.word)}`
  const example = findExample(sequence, lesson.key, '')
  const letters = lesson.key.slice(0, lesson.key.indexOf('='))
  return `${letters}${example === undefined ? '' : ` as in ${example}`} (for ${toShort(lesson.words)})`
}

const toLabel = ({ title, path }: MatchedBook): string => toPrintable(title ?? path)

/** Described by schemas/match.schema.json. */
export function toJsonMatches({ readers, books, share }: MatchReport) {
  return {
    schema: MATCH_SCHEMA,
    note: READER_CAUTION,
    share,
    readers: readers.map(({ path, reader }) => ({
      path,
      name: reader.name,
      sequence: reader.sequence.name,
      step: reader.step,
      accent: reader.sequence.accent,
    })),
    books: books.map(({ path, title, matches }) => ({
      path,
      title: title ?? null,
      words: matches[0]?.words ?? 0,
      readers: matches.map((match, at) => ({
        reader: readers[at]?.reader.name ?? '',
        readable: match.readable,
        readableShare: match.share,
        state: match.kind,
        teach: match.lessons.map((lesson) => toJsonLesson(lesson, readers[at]?.reader)),
      })),
    })),
  }
}

function toJsonLesson(lesson: Lesson, reader: Reader | undefined) {
  if (lesson.kind === 'word') return { kind: lesson.kind, word: lesson.word, times: lesson.wins }
  const [letters, sound] = lesson.key.split('=')
  const example = reader === undefined ? undefined : findExample(reader.sequence, lesson.key, '')
  return { kind: lesson.kind, letters, sound, example: example ?? null, words: lesson.words }
}

/** A row a book, a column a reader: the readable share, 0 to 1. */
export function toCsvMatches({ readers, books }: MatchReport): string {
  const head = ['path', 'title', 'words', ...readers.map(({ reader }) => `${reader.name} (${reader.step})`)]
  const rows = books.map(({ path, title, matches }) => [
    path,
    title,
    matches[0]?.words,
    ...matches.map(({ share }) => toShareFigure(share)),
  ])
  return toCsv([head, ...rows])
}
