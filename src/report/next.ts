// What `next` prints: which single thing opens most books, what to come back to, what was taught when, and a plan.

import { type LessonPlan, type PlanBook, toPrintArguments } from '../next/plan.ts'
import type { Reader } from '../readers/index.ts'
import type { TaughtItem } from '../sequence/item.ts'
import { findExample } from '../sequence/taught.ts'
import { type BookGap, type NextLesson, toShareOf } from '../shelf/index.ts'
import { OBJECT_CAUTION, READER_CAUTION } from './caution.ts'
import type { Paint } from './paint.ts'
import { toPercentOf } from './share.ts'
import { toCount, toList, toPercent, toPrintable, toTimes, wrap } from './text.ts'

const NEXT_SCHEMA = 1

export interface ShelfBook {
  /** As shown to people. */
  readonly path: string
  readonly title: string | undefined
  readonly gap: BookGap
  /** Running words that use each thing that is not secure, in the order of `open`. */
  readonly open: readonly number[]
}

export interface NextReport {
  readonly path: string
  readonly reader: Reader
  readonly books: readonly ShelfBook[]
  /** The share from which a book is ready, 0 to 1. */
  readonly share: number
  /** The best first. */
  readonly lessons: readonly NextLesson[]
  /** What was met and is not secure. */
  readonly open: readonly TaughtItem[]
  readonly plan: LessonPlan | undefined
}

interface View {
  readonly width: number
  readonly paint: Paint
}

const MOST_LESSONS = 3
const MOST_BOOKS = 4
const MOST_WORDS = 6
const MOST_RECORDS = 8

export function toPrettyNext(report: NextReport, { width, paint }: View): string {
  const { reader } = report
  const lines = (head: string, items: readonly string[]): readonly string[] =>
    items.length === 0 ? [] : ['', paint.strong(head), ...items.flatMap((item) => hang(item, width))]
  const parts = [
    paint.strong(`${toPrintable(reader.name)}, at ${reader.step}`),
    ...hang(toReadyText(report), width),
    ...lines('What to teach next', toLessonTexts(report)),
    ...lines('To come back to', toOpenTexts(report)),
    ...lines('Taught so far', toRecordTexts(reader)),
    ...(report.plan ? toPlanLines(report.plan, report, lines) : []),
    '',
    ...wrap(READER_CAUTION, width),
  ]
  return `${parts.join('\n')}\n`
}

const hang = (text: string, width: number): string[] =>
  wrap(text, width - 4).map((line, at) => (at === 0 ? `  ${line}` : `    ${line}`))

function toReadyText({ books, share }: NextReport): string {
  const ready = books.filter(({ gap }) => toShareOf(gap) >= share)
  const names = ready.slice(0, MOST_BOOKS).map(toLabel)
  const more = ready.length > names.length ? [`${ready.length - names.length} more`] : []
  const of = `${ready.length} of ${toCount(books.length, 'book')} ready now (${toPercent(share)} and more of the words)`
  return ready.length === 0 ? `${of}.` : `${of}: ${toList([...names, ...more])}.`
}

function toLessonTexts({ lessons, books, reader }: NextReport): readonly string[] {
  if (lessons.length === 0)
    return [
      'No single sound or word would help: what the books ask for comes with the next steps, or several things at once.',
    ]
  return lessons.slice(0, MOST_LESSONS).map((lesson, at) => {
    const opened = lesson.opens.map((book) => books[book]).filter((book) => book !== undefined)
    const shown = opened.slice(0, MOST_BOOKS).map(toLabel)
    const more = opened.length > shown.length ? [`${opened.length - shown.length} more`] : []
    const opens = opened.length === 0 ? 'opens no book by itself' : `opens ${toList([...shown, ...more])}`
    const words = lesson.words.slice(0, MOST_WORDS).map(toPrintable)
    const why = `${toCount(lesson.wins, 'more word')} can be read in books that are not ready`
    const list = lesson.kind === 'word' ? '' : ` (${toList(words)}${lesson.words.length > words.length ? ' …' : ''})`
    return `${at + 1}. ${toLessonName(lesson, reader)} ${opens}; ${why}${list}.`
  })
}

function toLessonName({ kind, what }: NextLesson, { sequence }: Reader): string {
  if (kind === 'word') return `${toPrintable(what)} by heart`
  const [letters = ''] = what.split('=')
  const example = findExample(sequence, what, '')
  return example === undefined ? letters : `${letters} as in ${example}`
}

function toOpenTexts({ open, books, share }: NextReport): readonly string[] {
  return open.map((item, at) => {
    const with_ = books
      .filter((book) => (book.open[at] ?? 0) > 0)
      .sort((one, other) => (other.open[at] ?? 0) - (one.open[at] ?? 0))
      .slice(0, MOST_BOOKS)
    const found = with_.map(
      (book) =>
        `${toLabel(book)} (${toTimes(book.open[at] ?? 0)}, ${toPercentOf(toShareOf(book.gap), share)} readable)`,
    )
    return `${toPrintable(item.written)}: ${found.length === 0 ? 'in no book of this shelf' : toList(found)}.`
  })
}

function toRecordTexts({ record, members }: Reader): readonly string[] {
  if (members !== undefined)
    return members.map(
      (one) =>
        `${toPrintable(one.name)}: at ${one.step}${one.record?.lastLesson === undefined ? '' : `, last lesson on ${one.record.lastLesson}`}.`,
    )
  const byDay = new Map<string, string[]>()
  for (const { item, last, isSecure } of record?.items ?? [])
    byDay.set(last, [...(byDay.get(last) ?? []), `${toPrintable(item.written)}${isSecure ? '' : ' (not secure)'}`])
  const days = [...byDay].reverse()
  const rest = days.length - MOST_RECORDS
  return [
    ...days.slice(0, MOST_RECORDS).map(([day, items]) => `${day}: ${toList(items)}.`),
    ...(rest > 0 ? [`and on ${toCount(rest, 'day')} before.`] : []),
  ]
}

type ToLines = (head: string, items: readonly string[]) => readonly string[]

function toPlanLines(plan: LessonPlan, { path, reader }: NextReport, lines: ToLines): readonly string[] {
  const { item, words, sentences, book } = plan
  const { examples, box, list, slips } = words
  const print = toPrintArguments(plan, path, reader.step)
  const say = (what: string, all: readonly string[]): readonly string[] =>
    all.length === 0 ? [] : [`${what}: ${all.join(', ')}.`]
  return lines(`A plan for one lesson: ${toPrintable(item.written)}`, [
    item.kind === 'word'
      ? 'Name it, find it, say it: the three-step lesson.'
      : 'New: say the sound, and read the example words together.',
    ...say('Example words', examples),
    ...say(box.of === 'objects' ? 'Box of small objects' : 'Picture cards', box.words),
    ...(box.of === 'objects' && box.words.length > 0 ? [OBJECT_CAUTION] : []),
    ...say('Word list', list),
    ...say('Slips to read silently', slips),
    ...sentences.map(({ text, path: from, page }) => `Sentence: ${toPrintable(text)} (${from}, page ${page})`),
    ...(book ? [toBookText(book, item)] : []),
    ...(print.length > 0 ? [`On paper: battledore ${print.map(quote).join(' ')}`] : []),
    `Afterwards: battledore taught ${quote(path)} ${quote(item.written)}`,
  ])
}

function toBookText(book: PlanBook, { written }: TaughtItem): string {
  const share = `${toPercent(book.share)} readable then`
  const uses =
    book.uses === 0 ? `no book that can be read uses ${toPrintable(written)} yet` : `it uses it ${toTimes(book.uses)}`
  return `Book: ${toLabel(book)} (${share}; ${uses}).`
}

const quote = (text: string): string => (/^[\w./-]+$/.test(text) ? text : JSON.stringify(text))

const toLabel = ({ title, path }: { readonly title: string | undefined; readonly path: string }): string =>
  toPrintable(title ?? path)

export function toJsonNext({ path, reader, books, share, lessons, open, plan }: NextReport) {
  return {
    schema: NEXT_SCHEMA,
    reader: { path, name: reader.name, sequence: reader.sequence.name, step: reader.step },
    share,
    books: books.map(({ path: book, title, gap }) => ({
      path: book,
      title: title ?? null,
      words: gap.words,
      share: toShareOf(gap),
    })),
    next: lessons.map((lesson) => ({
      kind: lesson.kind,
      what: lesson.kind === 'word' ? lesson.what : toLessonName(lesson, reader),
      opens: lesson.opens.map((at) => books[at]?.path ?? ''),
      wins: lesson.wins,
      words: lesson.words,
    })),
    notSecure: open.map((item, at) => ({
      what: item.written,
      books: books
        .filter((book) => (book.open[at] ?? 0) > 0)
        .map((book) => ({ path: book.path, times: book.open[at] ?? 0 })),
    })),
    taught: (reader.record?.items ?? []).map(({ item, last, isSecure }) => ({
      what: item.written,
      last,
      secure: isSecure,
    })),
    plan: plan
      ? {
          what: plan.item.written,
          ...plan.words,
          sentences: plan.sentences,
          print: toPrintArguments(plan, path, reader.step),
          book: plan.book ? { ...plan.book, title: plan.book.title ?? null } : null,
        }
      : null,
    caution: READER_CAUTION,
  }
}
