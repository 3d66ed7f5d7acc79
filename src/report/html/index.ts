// One self-contained page for a shelf of stories: no scripts, no outside files, readable without colour.

import { type CheckedStory, isChecked, type UncheckedStory } from '../../check/result.ts'
import { toProblemLine } from '../../problem/index.ts'
import { toAllProblems } from '../problems.ts'
import type { Reporter, Result } from '../reporter.ts'
import { toCount, toPercent, toPrintable } from '../text.ts'
import { PATTERNS } from './chart.ts'
import { escapeHtml } from './escape.ts'
import { type ShownStory, toShownStory, toStory } from './story.ts'
import { STYLE } from './style.ts'

export const htmlReporter: Reporter = { end: toHtml }

/** No page opened from this file may load or run anything. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"

export function toHtml(results: readonly Result[]): string {
  const checked = results.filter(isChecked)
  const failed = results.filter((result): result is UncheckedStory => !isChecked(result))
  const shown = checked.map((story, at) => toShownStory(story, `story-${at + 1}`))
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
    `<header><h1>What a child can read</h1><p>${toSum(checked)}</p>${toContents(shown)}${toFailures(failed)}</header>`,
    '<main>',
    ...shown.map(toStory),
    '</main>',
    '<footer><p>A word is decodable when every letter says a sound that has been taught by the step; sight words and names are listed by hand. Marked words have a number that leads to the note below the page.</p></footer>',
    '</body>',
    '</html>',
  ]
  return `${lines.join('\n')}\n`
}

function toSum(checked: readonly CheckedStory[]): string {
  const sum = (pick: (story: CheckedStory) => number): number =>
    checked.reduce((total, story) => total + pick(story), 0)
  const words = sum(({ figures }) => figures.total.words)
  const unread = sum(({ figures }) => figures.total.unreadable)
  const share = words === 0 ? '' : `, ${toPercent((words - unread) / words)} of them readable`
  return `${toCount(checked.length, 'story', 'stories')}, ${toCount(
    sum(({ story }) => story.pages.length),
    'page',
  )}, ${toCount(words, 'word')}${share}.`
}

function toContents(shown: readonly ShownStory[]): string {
  if (shown.length < 2) return ''
  const items = shown.map(
    ({ checked: { path, figures, messages }, title, id }) =>
      `<li><a href="#${id}">${escapeHtml(toPrintable(title ?? path))}</a>: ${toPercent(figures.total.readableShare)} readable, ${toCount(messages.length, 'message')}</li>`,
  )
  return `<nav aria-label="Stories"><ul>${items.join('')}</ul></nav>`
}

function toFailures(failed: readonly UncheckedStory[]): string {
  if (failed.length === 0) return ''
  const items = toAllProblems(failed).map(
    ({ problem }) => `<li>${escapeHtml(toPrintable(toProblemLine(problem)))}</li>`,
  )
  return `<section aria-labelledby="failed"><h2 id="failed">Not checked</h2><ul>${items.join('')}</ul></section>`
}
