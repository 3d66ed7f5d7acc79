// A small chart of how often things come up book by book, in digits: it needs no colour and can be read aloud.

import type { Recurrence } from '../shelf/index.ts'
import { pad, toCount, toPrintable, wrap } from './text.ts'

const MOST_LABEL = 16

/** A line a thing. Where the books do not fit side by side, a column stands for several. */
export function toChart(rows: readonly Recurrence[], books: number, width: number): readonly string[] {
  const label = Math.min(MOST_LABEL, Math.max(...rows.map(({ what }) => toPrintable(what).length)))
  const sums = rows.map(toSum)
  const room = width - label - 6 - Math.max(...sums.map(({ length }) => length))
  const isWide = books * 2 - 1 <= room
  const size = isWide ? 1 : Math.ceil(books / Math.max(1, room))
  const join = isWide ? ' ' : ''
  const note = [
    size === 1 ? 'A column a book, in order.' : `Each column stands for ${size} books, in order.`,
    'The figure is how often it is used, + is ten or more, 0 is not at all, - is before it is first met.',
  ].join(' ')
  const lines = rows.map((row, at) => {
    const columns = toColumnSigns(row, size)
    return `  ${pad(toPrintable(row.what).slice(0, label), label, 'left')}  ${columns.join(join)}  ${sums[at]}`
  })
  return [...wrap(note, width - 2).map((line) => `  ${line}`), ...lines]
}

function toColumnSigns({ times, first }: Recurrence, size: number): readonly string[] {
  return Array.from({ length: Math.ceil(times.length / size) }, (_, column) => {
    const from = column * size
    const used = times.slice(from, from + size).reduce((sum, one) => sum + one, 0)
    if (used === 0 && from + size <= first) return '-'
    return used > 9 ? '+' : String(used)
  })
}

function toSum({ times, first }: Recurrence): string {
  const used = times.reduce((sum, one) => sum + one, 0)
  const later = times.slice(first + 1)
  const back = later.filter((one) => one > 0).length
  const all = toCount(used, 'time')
  if (later.length === 0) return all
  return `${all}, back in ${back} of ${later.length} later ${later.length === 1 ? 'book' : 'books'}`
}
