// From what a rule reports to the message that a person or a program reads.

import { findPageNumber } from '../story/index.ts'
import type { Word } from '../story/types.ts'
import type { JudgedWord } from '../verdict/types.ts'
import { toFurtherNote } from './further.ts'
import { toTakenNote } from './meanings.ts'
import type { Fault, Message, Report, Rule, StoryContext } from './types.ts'

/** Where the pages of the rules lie in the package. */
const RULE_PAGES = 'rules/'

/** The page that documents a rule, as a path in the package. */
function toRuleUrl(id: string): string {
  return `${RULE_PAGES}${id}/README.md`
}

/** What is known of a word beside the fault that is reported. */
export interface BesideReport {
  /** Its faults that get no message of their own; the note names them. */
  readonly further: readonly Fault[]
  /** Missing where the report is on no fault of a word. */
  readonly judged?: JudgedWord | undefined
}

/**
 * Makes a message of a report.
 * Neither message nor note holds a newline or two spaces in a row: editors cut lines there.
 */
export function toMessage(
  rule: Rule,
  severity: Message['severity'],
  report: Report,
  context: StoryContext,
  { further, judged }: BesideReport = { further: [] },
): Message {
  const { at, word, letters = [] } = report
  const more = [toFurtherNote(further, context, word?.text ?? ''), toTakenNote(judged)]
  const note = [report.note, ...more].filter((part) => part).join(' ')
  return {
    rule: rule.id,
    severity,
    message: toOneLine(fillPlaces(rule.messages[report.messageId] ?? '', report.data ?? {})),
    start: at.start,
    end: at.end,
    page: report.page ?? word?.page ?? findPageNumber(context.story, at.start),
    word: word?.text,
    reason: report.reason,
    letters,
    letterRanges: word === undefined ? [] : letters.map(([from, to]) => word.toSource(from, to)),
    readableAt: report.readableAt ?? null,
    note: note === '' ? undefined : toOneLine(note),
    ruleNote: undefined,
    url: toRuleUrl(rule.id),
    suggestions: report.expected ?? [],
    canGo: false,
  }
}

/** The same message of the same word in another place. */
export function moveMessage(message: Message, word: Word): Message {
  const letterRanges = message.letters.map(([from, to]) => word.toSource(from, to))
  return { ...message, start: word.start, end: word.end, page: word.page, letterRanges }
}

/** Orders messages by place; of two at one place, the wider one first. */
function compareMessages(left: Message, right: Message): number {
  return (
    left.start - right.start || right.end - left.end || (left.rule < right.rule ? -1 : Number(left.rule > right.rule))
  )
}

/** In order of place. Most lists are so as they come, and to see that is a fraction of sorting them. */
export function toOrdered(messages: Message[]): Message[] {
  for (let at = 1; at < messages.length; at++) {
    if (compareMessages(messages[at - 1] as Message, messages[at] as Message) > 0) return messages.sort(compareMessages)
  }
  return messages
}

/** So many lists are joined at a time: each is an argument. */
const MOST_LISTS = 10_000

/** Lists, each in order of place, as one in order: where they follow one another, only their ends are looked at. */
export function joinOrdered(lists: readonly (readonly Message[])[]): Message[] {
  let all: Message[] = []
  for (let from = 0; from < lists.length; from += MOST_LISTS) all = all.concat(...lists.slice(from, from + MOST_LISTS))
  const isInOrder = (list: readonly Message[], at: number): boolean => {
    const [last, first] = [lists[at - 1]?.at(-1), list[0]]
    return last === undefined || first === undefined || compareMessages(last, first) <= 0
  }
  return lists.every(isInOrder) ? all : all.sort(compareMessages)
}

/** Texts cut at their places: `['', 'word', ' has ', 'letters', '']`. */
const cutTexts = new Map<string, readonly string[]>()

function fillPlaces(text: string, data: Readonly<Record<string, string | number>>): string {
  let parts = cutTexts.get(text)
  if (parts === undefined) {
    parts = text.split(/\{(\w+)\}/u)
    cutTexts.set(text, parts)
  }
  let filled = parts[0] ?? ''
  for (let at = 1; at < parts.length; at += 2) filled += `${data[parts[at] ?? ''] ?? `{${parts[at]}}`}${parts[at + 1]}`
  return filled
}

/** Most texts are fine as they are, and there is one for each word that cannot be read. */
function toOneLine(text: string): string {
  return /\s\s|[^\S ]|^\s|\s$/u.test(text) ? text.replace(/\s+/gu, ' ').trim() : text
}
