// What `check --readers` prints: one book for everybody of a class, in one table.

import type { Reader } from '../readers/index.ts'
import { type BookGap, toShareOf } from '../shelf/index.ts'
import { READER_CAUTION } from './caution.ts'
import type { Paint } from './paint.ts'
import { toPercentOf } from './share.ts'
import { pad, toColumns, toCount, toPrintable, wrap } from './text.ts'

const CLASS_SCHEMA = 1

export interface ClassBook {
  /** As shown to people. */
  readonly path: string
  readonly title: string | undefined
  /** One for each reader, in their order. */
  readonly gaps: readonly BookGap[]
}

export interface ClassReport {
  readonly readers: readonly { readonly path: string; readonly reader: Reader }[]
  readonly books: readonly ClassBook[]
  /** The share from which a book is ready, 0 to 1. */
  readonly share: number
}

interface View {
  readonly width: number
  readonly paint: Paint
}

const MOST_WORDS = 12

export function toPrettyClass({ readers, books, share }: ClassReport, { width, paint }: View): string {
  const parts = books.flatMap(({ path, title, gaps }) => {
    const words = toCount(gaps[0]?.words ?? 0, 'word')
    const head = title === undefined ? path : `${title} (${path})`
    const rows = readers.map(({ reader }, at) => toRow(reader, gaps[at], share))
    const columns = toColumns(
      [['reader', 'step', 'share', ''], ...rows.map(({ cells }) => cells)],
      ['left', 'left', 'right', 'left'],
    )
    const [first = '', ...lines] = columns
    const lead = Math.max(...columns.map((line) => line.length)) + 2
    return [
      ...wrap(paint.strong(`${toPrintable(head)}: ${words}`), width),
      paint.quiet(`  ${pad(first, lead, 'left')}cannot read yet`),
      ...lines.flatMap((line, at) => withMissing(line, lead, rows[at]?.missing ?? '', width)),
      '',
    ]
  })
  const note = books.length > 0 ? [`* marks ${Math.round(share * 100)} % and more: ready now.`] : []
  return `${[...parts, ...note.flatMap((line) => wrap(line, width)), ...wrap(READER_CAUTION, width)].join('\n')}\n`
}

function toRow(
  reader: Reader,
  gap: BookGap | undefined,
  share: number,
): { readonly cells: string[]; readonly missing: string } {
  if (gap === undefined) return { cells: ['', '', '', ''], missing: '' }
  const found = toShareOf(gap)
  const words = [...gap.missing].sort((one, other) => other.times - one.times).map(({ word }) => toPrintable(word))
  const rest = words.length - MOST_WORDS
  const missing = [...words.slice(0, MOST_WORDS), ...(rest > 0 ? [`and ${rest} more`] : [])].join(', ')
  const cells = [toPrintable(reader.name), reader.step, toPercentOf(found, share), found >= share ? '*' : '']
  return { cells, missing }
}

/** The words beside the row where there is room for them, else below it. */
function withMissing(line: string, lead: number, missing: string, width: number): string[] {
  if (missing === '') return [`  ${line}`]
  const room = width - lead - 2
  if (room < 24) return [`  ${line}`, ...wrap(missing, width - 6).map((part) => `      ${part}`)]
  const [first = '', ...more] = wrap(missing, room)
  return [`  ${pad(line, lead, 'left')}${first}`, ...more.map((part) => ' '.repeat(lead + 2) + part)]
}

export const toJsonClass = ({ readers, books, share }: ClassReport) => ({
  schema: CLASS_SCHEMA,
  share,
  books: books.map(({ path, title, gaps }) => ({
    path,
    title: title ?? null,
    words: gaps[0]?.words ?? 0,
    readers: readers.map(({ path: file, reader }, at) => {
      const gap = gaps[at]
      return {
        path: file,
        name: reader.name,
        step: reader.step,
        readable: gap?.readable ?? 0,
        share: gap ? toShareOf(gap) : 0,
        missing: (gap?.missing ?? []).map(({ word, times }) => ({ word, times })),
      }
    }),
  })),
  caution: READER_CAUTION,
})
