// What a story's problems mean for whoever checks it, and those that may be a slip of the writer.

import { findHtmlText } from './html.ts'
import type { StoryProblem } from './types.ts'

const warnings: ReadonlySet<StoryProblem['code']> = new Set(['other-language', 'dashes-below-text', 'text-in-html'])

/** Whether a problem keeps a story from being checked; any other is told as a warning. */
export function isObstacle({ code }: StoryProblem): boolean {
  return !warnings.has(code)
}

const underline = /[\r\n][ \t]*(-+)[ \t]*$/

/** A heading that Markdown makes of text above dashes; its writer may have meant a new page. */
export function findDashes(source: string, start: number, end: number): StoryProblem | undefined {
  const found = underline.exec(source.slice(start, end))
  const dashes = found?.[1]
  if (found === null || dashes === undefined) return undefined
  const from = start + found.index + found[0].indexOf('-')
  return {
    code: 'dashes-below-text',
    message:
      'This line of dashes makes a heading of the text above it, not a new page. Leave a blank line before it. For a heading, write `##` before the text.',
    start: from,
    end: from + dashes.length,
  }
}

/** Text in a block of HTML, which nobody checks. */
export function findUnreadHtml(source: string, start: number, end: number): StoryProblem | undefined {
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
