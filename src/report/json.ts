// The report for other programs: one JSON document, described by schemas/check.schema.json.

import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import type { Message, StoryFigures } from '../lint/types.ts'
import type { Figures } from '../verdict/types.ts'
import { toProblemFields } from './problems.ts'
import type { Reporter } from './reporter.ts'

/** Raised when a field changes its meaning or goes; new fields may come without it. */
const CHECK_SCHEMA = 2

/**
 * The text of `JSON.stringify` of the whole report, two blanks an indent, written file by file. `sequence` is that of the first
 * story, since each file names its own; what could not be checked stands behind all files, so it is held.
 */
export function createJsonReporter(): Reporter {
  const failures: unknown[] = []
  let begun = false
  const begin = (sequence: string | null): string => {
    begun = true
    return `{\n  "schema": ${CHECK_SCHEMA},\n  "sequence": ${JSON.stringify(sequence)},\n  "files": [`
  }
  return {
    story(result) {
      if (!isChecked(result)) {
        failures.push(toFailure(result))
        return ''
      }
      const before = begun ? ',' : begin(result.sequence.name)
      return `${before}\n    ${toIndented({ path: result.path, ...toFileFields(result) }, 4)}`
    },
    end() {
      const close = begun ? '\n  ]' : `${begin(null)}]`
      return `${close},\n  "failures": ${toIndented(failures, 2)}\n}\n`
    },
  }
}

const toFailure = ({ path, problems }: UncheckedStory) => ({ path, problems: problems.map(toProblemFields) })

/** A value as it stands so far from the margin in a larger one: no text of JSON holds a line end of its own. */
export const toIndented = (value: unknown, indent: number): string =>
  JSON.stringify(value, null, 2).replaceAll('\n', `\n${' '.repeat(indent)}`)

/** All of a story but its path. */
export const toFileFields = (checked: CheckedStory) => ({
  ...toStoryFields(checked),
  messages: checked.messages.map((message) => toMessageFields(message, checked)),
})

/** What stands before the messages. */
export function toStoryFields(checked: CheckedStory) {
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
    totals: toTotals(figures),
  }
}

/** Over all pages. */
export const toTotals = ({ total, different }: Pick<StoryFigures, 'total' | 'different'>) => ({
  ...toFigures(total),
  different: toFigures(different),
})

const toFigures = (figures: Figures | undefined): Figures | Record<string, never> => (figures ? { ...figures } : {})

/** One message with its place in lines and columns, from 1. `json-bytes` writes the same. */
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
    leaveOut: message.canGo,
  }
}
