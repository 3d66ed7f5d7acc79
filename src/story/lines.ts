// Tells at which line and column an offset of the source stands.

import { findLastIndex } from '../sorted.ts'

/** One-based line and column; a column counts UTF-16 units, as editors and other linters do. */
interface LinePoint {
  readonly line: number
  readonly column: number
}

export interface Lines {
  /** How many lines the source has; an empty source has one. */
  readonly count: number
  /** The place of a source offset. Offsets outside the source give its first or last place. */
  toPoint(offset: number): LinePoint
  /** The source offset of a place; columns past the end of a line give its end. */
  toOffset(line: number, column: number): number
}

const lineEnd = /\r\n?|\n/g

/**
 * Index the lines of a source once, when first asked for, so that each look-up is a short search.
 *
 * A byte order mark is no column: editors do not show it.
 */
export function createLines(source: string): Lines {
  let found: readonly number[] | undefined
  const toStarts = (): readonly number[] => (found ??= toLineStarts(source))
  let last = 0

  /** Whoever asks goes mostly forwards: the line of the time before, or one of the next two. */
  function findLine(starts: readonly number[], offset: number): number {
    if (offset >= (starts[last] as number)) {
      for (let at = last; at < last + 3; at++) {
        const next = starts[at + 1]
        if (next === undefined || offset < next) return (last = at)
      }
    }
    last = Math.max(
      0,
      findLastIndex(starts.length, (at) => (starts[at] as number) <= offset),
    )
    return last
  }

  return {
    get count() {
      return toStarts().length
    },
    toPoint(offset) {
      const starts = toStarts()
      const line = findLine(starts, offset)
      return { line: line + 1, column: Math.max(0, Math.min(offset, source.length) - (starts[line] as number)) + 1 }
    },
    toOffset(line, column) {
      const starts = toStarts()
      const start = starts[Math.max(0, Math.min(line, starts.length) - 1)] ?? 0
      const end = starts[line] ?? source.length
      return Math.max(start, Math.min(start + column - 1, end))
    },
  }
}

function toLineStarts(source: string): number[] {
  const starts = [source.startsWith('\uFEFF') ? 1 : 0]
  lineEnd.lastIndex = 0
  while (lineEnd.test(source)) starts.push(lineEnd.lastIndex)
  return starts
}
