// The report for other programs: one JSON document, described by schemas/check.schema.json.

import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Figures } from '../verdict/types.ts'
import { toProblemFields } from './problems.ts'

/** Raised when a field changes its meaning or goes; new fields may come without it. */
const CHECK_SCHEMA = 2

/** The whole report as a plain value. `sequence` is that of the first story: each file names its own. */
export function toJsonReport(results: readonly (CheckedStory | UncheckedStory)[]): unknown {
  const checked = results.filter(isChecked)
  return {
    schema: CHECK_SCHEMA,
    sequence: checked[0]?.sequence.name ?? null,
    files: checked.map((one) => ({ path: one.path, ...toFileFields(one) })),
    failures: results
      .filter((one): one is UncheckedStory => !isChecked(one))
      .map(({ path, problems }) => ({ path, problems: problems.map(toProblemFields) })),
  }
}

/** All of a story but its path. */
export function toFileFields(checked: CheckedStory) {
  const { figures, story, lines } = checked
  return {
    sequence: checked.sequence.name,
    step: checked.step.id,
    accent: checked.accent,
    pages: story.pages.map((page, at) => ({
      page: page.number,
      line: lines.toPoint(page.start).line,
      ...toFigures(figures.pages[at]),
    })),
    totals: { ...toFigures(figures.total), different: toFigures(figures.different) },
    messages: checked.messages.map((message) => toMessageFields(message, checked)),
  }
}

const toFigures = (figures: Figures | undefined): Figures | Record<string, never> => (figures ? { ...figures } : {})

/** One message with its place in lines and columns, from 1. */
function toMessageFields(message: Message, { lines }: Pick<CheckedStory, 'lines'>) {
  const start = lines.toPoint(message.start)
  const end = lines.toPoint(message.end)
  return {
    rule: message.rule,
    severity: message.severity,
    message: message.message,
    line: start.line,
    column: start.column,
    endLine: end.line,
    endColumn: end.column,
    offset: message.start,
    endOffset: message.end,
    page: message.page,
    word: message.word ?? null,
    reason: message.reason ?? null,
    letters: message.letters,
    readableAt: message.readableAt,
    note: message.note ?? null,
    url: message.url,
    suggestions: message.suggestions,
    leaveOut: message.canGo === true,
  }
}
