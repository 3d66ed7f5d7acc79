// Problems with their lines and columns, and told in one line.

import { createLines, type Lines } from '../story/lines.ts'
import type { Range } from '../story/types.ts'
import type { Problem, Source } from './types.ts'

/** Pass `lines` where several problems of one source are told. */
export function toProblem(
  source: Source,
  at: Range,
  message: string,
  more: { readonly severity?: Problem['severity']; readonly expected?: readonly string[] } = {},
  lines: Lines = createLines(source.text),
): Problem {
  const start = lines.toPoint(at.start)
  const end = lines.toPoint(at.end)
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
