// One line a message, for editors and for other small programs.

import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import { createOnce, toNewProblems, toProblemReportLine } from './problems.ts'
import { toPrintable } from './text.ts'

/** `path:line:col-endLine:endCol: severity: message [rule]`; a story that could not be checked has its reasons as lines. */
export function toLineReport(results: readonly (CheckedStory | UncheckedStory)[]): string {
  const isNew = createOnce()
  return results
    .flatMap((result) =>
      isChecked(result)
        ? toMessageLines(result)
        : toNewProblems(result, isNew).map((shown) => toProblemReportLine(shown)),
    )
    .join('')
}

const toMessageLines = ({ path, lines, messages }: CheckedStory): string[] =>
  messages.map(({ start: from, end: to, severity, message, rule }) => {
    const start = lines.toPoint(from)
    const end = lines.toPoint(to)
    return `${toPrintable(path)}:${start.line}:${start.column}-${end.line}:${end.column}: ${severity}: ${message} [${rule}]\n`
  })
