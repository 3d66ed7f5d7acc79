// Offsets as lines and columns, and problems told in one line.

import type { Range } from '../story/types.ts'
import type { Problem, Source } from './types.ts'

/** Line and column from 1; columns count UTF-16 units. `\n` and `\r\n` end a line. */
export function toPlace(text: string, offset: number): { readonly line: number; readonly column: number } {
  let line = 1
  let lineStart = 0
  for (let end = text.indexOf('\n'); end >= 0 && end < offset; end = text.indexOf('\n', end + 1)) {
    line++
    lineStart = end + 1
  }
  return { line, column: offset - lineStart + 1 }
}

export function toProblem(
  source: Source,
  at: Range,
  message: string,
  more: { readonly severity?: Problem['severity']; readonly expected?: readonly string[] } = {},
): Problem {
  const start = toPlace(source.text, at.start)
  const end = toPlace(source.text, at.end)
  return {
    ...{ path: source.path, start: at.start, end: at.end, message },
    ...{ line: start.line, column: start.column, endLine: end.line, endColumn: end.column },
    ...{ severity: more.severity ?? 'error', expected: more.expected ?? [] },
  }
}

/** `battledore.yaml:3:1: error: …` */
export function toProblemLine(problem: Problem): string {
  return `${problem.path}:${problem.line}:${problem.column}: ${problem.severity}: ${problem.message}`
}
