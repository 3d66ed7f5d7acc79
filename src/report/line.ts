// One line a message, for editors and for other small programs.

import { type CheckedStory, isChecked } from '../check/result.ts'
import { createOnce, toNewProblems, toProblemReportLine } from './problems.ts'
import type { Reporter } from './reporter.ts'
import { toPrintable } from './text.ts'

/** `path:line:col-endLine:endCol: severity: message [rule]`; a story that could not be checked has its reasons as lines. */
export function createLineReporter(): Reporter {
  const isNew = createOnce()
  return {
    story: (result) =>
      isChecked(result)
        ? toMessageLines(result)
        : toNewProblems(result, isNew)
            .map((shown) => toProblemReportLine(shown))
            .join(''),
    end: () => '',
  }
}

export function toMessageLines({ path, lines, messages }: CheckedStory): string {
  const shown = toPrintable(path)
  let text = ''
  for (const { start: from, end: to, severity, message, rule } of messages) {
    const start = lines.toPoint(from)
    const end = lines.toPoint(to)
    text += `${shown}:${start.line}:${start.column}-${end.line}:${end.column}: ${severity}: ${message} [${rule}]\n`
  }
  return text
}
