// One self-contained page for a shelf of stories: no scripts, no outside files, readable without colour.

import { isChecked, type UncheckedStory } from '../../check/result.ts'
import { toProblemLine } from '../../problem/index.ts'
import { createOnce, toNewProblems } from '../problems.ts'
import type { Reporter } from '../reporter.ts'
import type { Sum } from '../sum.ts'
import { toCount, toPercent, toPrintable } from '../text.ts'
import { PATTERNS } from './chart.ts'
import { escapeHtml } from './escape.ts'
import { type ShownStory, toShownStory, toStory } from './story.ts'
import { STYLE } from './style.ts'

/** No page opened from this file may load or run anything. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"

/** The head lists all stories, so it waits for them; of each it needs a line. */
export function createHtmlReporter(): Reporter {
  const failed: UncheckedStory[] = []
  const contents: string[] = []
  return {
    story(result) {
      if (!isChecked(result)) {
        failed.push(result)
        return ''
      }
      const shown = toShownStory(result, `story-${contents.length + 1}`)
      contents.push(toContentsItem(shown))
      return `${toStory(shown)}\n`
    },
    head: (sum) => toHead(sum, contents, failed),
    end: () => END,
  }
}

const END = `${[
  '</main>',
  '<footer><p>A word is decodable when every letter says a sound that has been taught by the step; sight words and names are listed by hand. Marked words have a number that leads to the note below the page.</p></footer>',
  '</body>',
  '</html>',
].join('\n')}\n`

function toHead(sum: Sum, contents: readonly string[], failed: readonly UncheckedStory[]): string {
  const lines = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<title>What a child can read: a Battledore report</title>',
    `<style>\n${STYLE}\n</style>`,
    '</head>',
    '<body>',
    PATTERNS,
    // No script runs here: a box that is ticked hides by the look of the page what is not the child's.
    '<input type="checkbox" id="alone"><label for="alone">The pages alone, as a child sees them: without marks and notes, to print</label>',
    `<header><h1>What a child can read</h1><p>${toSum(sum)}</p>${toContents(contents)}${toFailures(failed)}</header>`,
    '<main>',
  ]
  return `${lines.join('\n')}\n`
}

function toSum({ stories, pages, words, unread }: Sum): string {
  const share = words === 0 ? '' : `, ${toPercent((words - unread) / words)} of them readable`
  return `${toCount(stories, 'story', 'stories')}, ${toCount(pages, 'page')}, ${toCount(words, 'word')}${share}.`
}

const toContentsItem = ({ checked: { path, figures, messages }, title, id }: ShownStory): string =>
  `<li><a href="#${id}">${escapeHtml(toPrintable(title ?? path))}</a>: ${toPercent(figures.total.readableShare)} readable, ${toCount(messages.length, 'message')}</li>`

const toContents = (items: readonly string[]): string =>
  items.length < 2 ? '' : `<nav aria-label="Stories"><ul>${items.join('')}</ul></nav>`

function toFailures(failed: readonly UncheckedStory[]): string {
  if (failed.length === 0) return ''
  const isNew = createOnce()
  const items = failed
    .flatMap((result) => toNewProblems(result, isNew))
    .map(({ problem }) => `<li>${escapeHtml(toPrintable(toProblemLine(problem)))}</li>`)
  return `<section aria-labelledby="failed"><h2 id="failed">Not checked</h2><ul>${items.join('')}</ul></section>`
}
