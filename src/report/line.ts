// One line a message, for editors and for other small programs.

import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import { toPrintable } from './text.ts'

/** `path:line:col-endLine:endCol: severity: message [rule]`; a file that could not be checked has its failures as lines. */
export function toLineReport(results: readonly (CheckedStory | UncheckedStory)[]): string {
  return results
    .filter(isChecked)
    .flatMap((checked) =>
      checked.messages.map((message) => {
        const start = checked.lines.toPoint(message.start)
        const end = checked.lines.toPoint(message.end)
        return `${toPrintable(checked.path)}:${start.line}:${start.column}-${end.line}:${end.column}: ${message.severity}: ${message.message} [${message.rule}]\n`
      }),
    )
    .join('')
}
