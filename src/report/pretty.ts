// The report that a teacher reads: a table of pages, then what to mend page by page, then the sum.

import type { CheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Figures } from '../verdict/types.ts'
import { toAccentName } from './accent.ts'
import { toExplainCommand } from './explain-command.ts'
import { type Group, toGroups } from './groups.ts'
import type { Paint } from './paint.ts'
import { toStepName } from './step.ts'
import type { Sum } from './sum.ts'
import { toColumns, toCount, toList, toPercent, toPrintable, toShareCell, wrap } from './text.ts'

export interface PrettyOptions {
  /** Columns of the terminal. */
  readonly width: number
  readonly paint: Paint
  /** What of all messages is shown, such as `on the changed lines`; missing where all are. */
  readonly scope?: string
}

const HEAD = ['page', 'words', 'decodable', 'sight', 'names', 'not readable', 'share'] as const
const ALIGNS = ['right', 'right', 'right', 'right', 'right', 'right', 'right'] as const

/** One story: its name, what was assumed, its pages and its messages. */
export function toPrettyStory(checked: CheckedStory, options: PrettyOptions): string {
  const { width, paint } = options
  const { sequence, step, figures, story, accent } = checked
  const who = wrap(`Step ${toStepName(step)} of ${sequence.title}; ${toAccentName(accent)}`, width - 2)
  const pages = story.pages.map(({ number }, at) => [String(number), figures.pages[at]] as const)
  const head = [paint.strong(toPrintable(checked.path)), ...who.map((line) => `  ${line}`), '']
  return `${[...head, ...toTable(pages, figures.total, paint), ''].join('\n')}\n${toMessages(checked, options)}`
}

function toTable(pages: readonly (readonly [string, Figures | undefined])[], total: Figures, paint: Paint): string[] {
  const rows = pages.map(([page, figures]) => toRow(page, figures))
  const all = pages.length > 1 ? [toRow('all', total)] : []
  const [head = '', ...body] = toColumns([[...HEAD], ...rows, ...all], ALIGNS)
  return [paint.quiet(`  ${head}`), ...body.map((line) => `  ${line}`)]
}

const toRow = (page: string, figures: Figures | undefined): string[] =>
  figures === undefined
    ? [page]
    : [
        page,
        ...[figures.words, figures.decodable, figures.sight, figures.names, figures.unreadable].map(String),
        toShareCell(figures),
      ]

/** Messages under a heading for each page; the same thing said of the same word is said once, with its other places. */
function toMessages(checked: CheckedStory, options: PrettyOptions): string {
  if (checked.messages.length === 0) return `  ${toNothing(checked, options)}\n\n`
  const toAdvice = findAdvice(options)
  const hasPages = checked.story.pages.length > 1
  let text = ''
  let page = 0
  for (const group of toGroups(checked.messages)) {
    const [first] = group
    if (first.page !== page) {
      page = first.page
      if (hasPages) text += `${options.paint.strong(`  Page ${page}`)}\n`
    }
    text += `${toHead(group, checked, options)}${toAdvice(first)}\n`
  }
  return text
}

/** A rule can be off, or a message passed over: then not every word can be read. */
function toNothing({ figures }: CheckedStory, { scope }: PrettyOptions): string {
  if (scope !== undefined) return `Nothing to mend ${scope}.`
  return figures.total.unreadable > 0 ? 'Nothing to mend.' : 'Nothing to mend: every word can be read at this step.'
}

/** `27:13 error: …` with the rest set in below it: where, and what is wrong. */
function toHead(group: Group, { lines }: CheckedStory, { width, paint }: PrettyOptions): string {
  const [first, ...others] = group
  const { severity, message } = first
  const toPlaceText = ({ start }: Message): string => {
    const { line, column } = lines.toPoint(start)
    return `${line}:${column}`
  }
  const also = others.length > 0 ? `, also at ${toList(others.map(toPlaceText))}` : ''
  const all = wrap(`${toPlaceText(first)}${also} ${severity}: ${message}`, width - 6)
  const plain = `${severity}:`
  const label = severity === 'error' ? paint.error(plain) : paint.warning(plain)
  const [head = ''] = all
  let text = `    ${label === plain ? head : head.replace(plain, () => label)}\n`
  for (let at = 1; at < all.length; at++) text += `      ${all[at]}\n`
  return text
}

type ToAdvice = (message: Message) => string

/** Most advice is given again and again, in one story and in the next. */
const adviceOf = new WeakMap<PrettyOptions, ToAdvice>()
/** A watch never ends, so what is kept has a bound. */
const MOST_KEPT = 10_000

function findAdvice(options: PrettyOptions): ToAdvice {
  const known = adviceOf.get(options)
  if (known !== undefined) return known
  const made = createAdvice(options)
  adviceOf.set(options, made)
  return made
}

/** What to do, and in brackets the rule for those who set it. */
function createAdvice({ width, paint }: PrettyOptions): ToAdvice {
  const toLines = (one: string): string => {
    let text = ''
    for (const line of wrap(one, width - 6)) text += `${paint.quiet(`      ${line}`)}\n`
    return text
  }
  const known = new Map<string, string>()
  const toKnownLines = (one: string): string => {
    const before = known.get(one)
    if (before !== undefined) return before
    const text = toLines(one)
    if (known.size >= MOST_KEPT) known.clear()
    known.set(one, text)
    return text
  }
  return ({ note, suggestions, rule }) => {
    const offers = suggestions.length === 0 ? '' : toKnownLines(`Could stand here: ${toList(suggestions, 'or')}.`)
    return `${note ? toKnownLines(note) : ''}${offers}${toKnownLines(`(${rule})`)}`
  }
}

/** The sum of all stories, and what to do next. */
export function toSummary(sum: Sum, { width, paint, scope }: PrettyOptions): string {
  const { stories, failed, words, unread, errors, warnings, withMessages, explained } = sum
  const read =
    words === 0 ? 'no words' : `${toCount(words, 'word')}, ${toPercent((words - unread) / words)} of them readable`
  const first = `${toCount(stories, 'story', 'stories')}, ${toCount(sum.pages, 'page')}, ${read}.`
  const found =
    errors + warnings === 0
      ? `Nothing to mend${scope === undefined ? '' : ` ${scope}`}.`
      : `${toCount(errors, 'error')} and ${toCount(warnings, 'warning')} in ${toCount(withMessages, 'story', 'stories')}.`
  const paragraphs = [
    stories > 0 ? `${first} ${found}` : '',
    failed > 0 ? `${toCount(failed, 'file')} could not be checked.` : '',
    explained
      ? `To see how the letters of a word say its sounds: ${toExplainCommand(explained.word.toLowerCase(), explained, explained.step)}`
      : '',
  ]
  const lines = paragraphs.filter((one) => one !== '').flatMap((one) => wrap(one, width))
  return `${lines.map((line, at) => (at === 0 && errors > 0 ? paint.error(line) : line)).join('\n')}\n`
}
