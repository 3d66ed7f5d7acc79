// What `shelf` prints for a person: a row a book, what each book brings, what comes back, and what is missing.

import type { Shelf, ShelvedBook } from '../shelf/index.ts'
import { toChart } from './chart.ts'
import { OPEN_NOTE, toHeldText } from './held-back.ts'
import type { Paint } from './paint.ts'
import { toColumns, toCount, toCut, toList, toPercent, toPrintable, wrap } from './text.ts'

export { toCsvShelf, toJsonShelf } from './shelf-data.ts'

interface View {
  readonly width: number
  readonly paint: Paint
}

export function toPrettyShelf(shelf: Shelf, share: number, view: View): string {
  const parts = [
    ...toTable(shelf, share, view),
    '',
    ...toBrought(shelf, view),
    ...toHeld(shelf, view),
    ...toCharts(shelf, view),
    view.paint.strong('What is missing'),
    ...toMissing(shelf).flatMap((line) => hang(line, view.width)),
  ]
  return `${parts.join('\n')}\n`
}

const HEAD = ['', 'book', 'step', 'pages', 'words', 'different', 'new', 'readable', 'earliest'] as const
const ALIGNS = ['right', 'left', 'left', 'right', 'right', 'right', 'right', 'right', 'left'] as const

function toTable({ books }: Shelf, share: number, { width, paint }: View): readonly string[] {
  const rows = books.map((book, at) => [
    String(at + 1),
    toLabel(book),
    book.step ?? 'none',
    ...[book.pages, book.words, book.different, book.newWords.length].map(String),
    book.share === undefined ? '' : toPercent(book.share),
    book.earliest.step ?? 'beyond',
  ])
  const others = toColumns(
    [[...HEAD], ...rows].map((row) => row.map((cell, at) => (at === 1 ? '' : cell))),
    ALIGNS,
  )
  const room = width - Math.max(...others.map((line) => line.length))
  const note = `“New” counts the different words that no earlier book has used. “Readable” is the share of running words at the book's step; “earliest” is the first step at which it is ${toPercent(share)} or more.`
  if (room < FEWEST_COLUMNS)
    return [...books.flatMap((book, at) => toBookLines(book, at, width)), '', ...wrap(note, width)]
  const cut = [[...HEAD], ...rows].map((row) => row.map((cell, at) => (at === 1 ? toCut(cell, room) : cell)))
  const [head = '', ...body] = toColumns(cut, ALIGNS)
  return [paint.quiet(head), ...body, '', ...wrap(note, width)]
}

/** A table with less room for titles than this would tell no book from another. */
const FEWEST_COLUMNS = 16

/** The same as a row of the table, as a sentence. */
function toBookLines(book: ShelvedBook, at: number, width: number): readonly string[] {
  const readable = book.share === undefined ? '' : `; ${toPercent(book.share)} readable`
  const counts = [
    book.step === undefined ? 'no step' : `step ${book.step}`,
    toCount(book.pages, 'page'),
    `${toCount(book.words, 'word')} (${book.different} different, ${book.newWords.length} new)`,
  ]
  return hang(
    `${at + 1} ${toLabel(book)}: ${counts.join(', ')}${readable}, earliest ${book.earliest.step ?? 'beyond the last step'}.`,
    width,
  )
}

function toBrought({ books }: Shelf, { width, paint }: View): readonly string[] {
  const lines = books.flatMap((book, at) => {
    const practised = book.practises.map(
      ({ pattern, words, different }) => `${pattern} in ${toCount(words, 'word')}, ${different} different`,
    )
    const own = [
      ...(practised.length === 0 ? [] : [`practises ${practised.join('; ')}`]),
      ...(book.newSightWords.length === 0 ? [] : [`first meets the sight words ${toList(book.newSightWords)}`]),
    ]
    return own.length === 0 ? [] : hang(`${at + 1} ${toLabel(book)}: ${own.join('; ')}.`, width)
  })
  return lines.length === 0 ? [] : [paint.strong('What each book brings'), ...lines, '']
}

/** How many words of a book are shown where there are more. */
const MOST_WORDS = 6

/** Of each book that is too hard for its own step: the words, with their first places. */
function toHeld({ books }: Shelf, { width, paint }: View): readonly string[] {
  const held = books.filter(({ heldBackBy }) => heldBackBy.length > 0)
  if (held.length === 0) return []
  const shown = held.flatMap(({ heldBackBy }) => heldBackBy.slice(0, MOST_WORDS))
  const lines = held.flatMap(({ path, heldBackBy }) => {
    const words = heldBackBy.slice(0, MOST_WORDS).map((word) => toHeldText(word, `${toPrintable(path)}:`))
    const more = heldBackBy.length - words.length
    return [...words, ...(more > 0 ? [`and ${more} more`] : [])].flatMap((line) => hang(line, width))
  })
  const notes = shown.some(({ isOpen }) => isOpen) ? wrap(OPEN_NOTE, width) : []
  return [
    paint.strong('What makes a book too hard for its step, or unsure, where each word first stands'),
    ...lines,
    ...notes,
    '',
  ]
}

function toCharts({ sightWords, patterns, books }: Shelf, { width, paint }: View): readonly string[] {
  const part = (title: string, rows: Shelf['sightWords']): readonly string[] =>
    rows.length === 0 ? [] : [paint.strong(title), ...toChart(rows, books.length, width), '']
  return [...part('How the sight words come back', sightWords), ...part('How the patterns come back', patterns)]
}

function toMissing({ missingSteps, neverReturning, sightWords, books }: Shelf): readonly string[] {
  const lines = missingSteps.map(({ sequence, steps }) =>
    steps.length === 0
      ? `Every step of ${sequence} has a book.`
      : `Steps of ${sequence} without a book: ${steps.join(', ')}.`,
  )
  if (sightWords.length === 0) return lines
  const places = new Map(sightWords.map(({ what, first }) => [what, first + 1]))
  const never = neverReturning.map((word) => `${word} (book ${places.get(word)})`)
  if (books.length < 2) return lines
  return [
    ...lines,
    never.length === 0
      ? 'Every sight word comes back in a later book.'
      : `Sight words that never come back: ${never.join(', ')}.`,
  ]
}

const hang = (line: string, width: number): string[] =>
  wrap(line, width - 4).map((part, at) => (at === 0 ? `  ${part}` : `    ${part}`))

const toLabel = ({ title, path }: Pick<ShelvedBook, 'title' | 'path'>): string => toPrintable(title ?? path)
