// What a story's problems mean for whoever checks it, and those that may be a slip of the writer.

import { type Problem, toPlace, toProblem } from '../problem/index.ts'
import { findHtmlText } from './html.ts'
import { createLines } from './lines.ts'
import type { Oddity } from './types.ts'

const warnings: ReadonlySet<Oddity['code']> = new Set(['other-language', 'dashes-below-text', 'text-in-html'])

/** With their places; the source is cut into lines only where there is something to tell. */
export function toStoryProblems(found: readonly Oddity[], source: string): readonly Problem[] {
  if (found.length === 0) return []
  const lines = createLines(source)
  return found.map(({ start, end, code, message }) =>
    toProblem({
      code,
      message,
      place: toPlace({ start, end }, lines),
      severity: warnings.has(code) ? 'warning' : 'error',
    }),
  )
}

const underline = /[\r\n][ \t]*(-+)[ \t]*$/

/** A heading that Markdown makes of text above dashes; its writer may have meant a new page. */
export function findDashes(source: string, start: number, end: number): Oddity | undefined {
  const found = underline.exec(source.slice(start, end))
  if (found === null) return undefined
  const from = start + found.index + found[0].indexOf('-')
  return {
    code: 'dashes-below-text',
    message:
      'This line of dashes makes a heading of the text above it, not a new page. Leave a blank line before it. For a heading, write `##` before the text.',
    start: from,
    end: from + (found[1] as string).length,
  }
}

/** Text in a block of HTML, which nobody checks. */
export function findUnreadHtml(source: string, start: number, end: number): Oddity | undefined {
  const found = findHtmlText(source.slice(start, end))
  return (
    found && {
      code: 'text-in-html',
      message:
        'This text stands in HTML, so it is not read or counted. Write it without the tags, or begin its lines with `>` if it is for the adult.',
      start: start + found.start,
      end: start + found.end,
    }
  )
}
