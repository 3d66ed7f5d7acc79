// Says again what was said of blocks and pages, each where it stands now.

import { isSame } from '../../sorted.ts'
import type { Block, Page } from '../../story/types.ts'
import type { MadeRules } from '../made-rules.ts'
import { joinOrdered, toOrdered } from '../message.ts'
import type { Message } from '../types.ts'
import type { IsFirst } from '../word-faults.ts'
import { type Finished, moveMessages, type SaidPage, type Saying } from './saying.ts'

/** How often the story has a word. */
export type CountOf = (word: string) => number

/** Completes messages once the rules have spoken. */
export interface Finish {
  /** Those of one block: may depend on the block, and on how often the story has words of it. */
  block(messages: readonly Message[], block: Block, countOf: CountOf): readonly Message[]
  /** Those of pages and of the story. */
  loose(messages: readonly Message[], countOf: CountOf): readonly Message[]
}

export interface EchoTools {
  readonly made: MadeRules
  readonly finish: Finish
  readonly isFirst: IsFirst
  readonly countOf: CountOf
  /** Words that the story has more or less often than when its blocks were last asked for their messages. */
  readonly changedWords: readonly string[]
}

/** The messages of all pages and blocks, in order of place. */
export function echo(pages: readonly SaidPage[], tools: EchoTools): Message[] {
  const lists: (readonly Message[])[] = []
  const add = (messages: readonly Message[]): void => {
    if (messages.length > 0) lists.push(messages)
  }
  for (const said of pages) {
    add(tools.finish.loose(echoPage(said, tools), tools.countOf))
    const { sayings, starts, page } = said
    for (let at = 0; at < sayings.length; at++)
      add(echoBlock(sayings[at] as Saying, starts[at] ?? 0, page.number, tools))
  }
  return joinOrdered(lists)
}

function echoBlock(saying: Saying, start: number, page: number, tools: EchoTools): readonly Message[] {
  const chosen = choose(saying, tools.isFirst)
  let known = saying.finished
  if (known === undefined || !isSame(chosen, known.chosen) || hasChanged(known.counts, tools))
    known = saying.finished = finishBlock(saying, chosen, tools)
  if (known.start !== start || known.page !== page) {
    known.messages = moveMessages(known.messages, start - known.start, page)
    known.start = start
    known.page = page
  }
  return known.messages
}

function echoPage({ page, starts, memory }: SaidPage, { made }: EchoTools): readonly Message[] {
  const before = memory.said
  const by = before && findPageShift(before, page, starts)
  if (before && by !== undefined) return moveMessages(before.messages, by, page.number)
  made.page(page)
  const messages = toOrdered(made.take())
  memory.said = { page, starts, messages }
  return messages
}

const ALL: readonly boolean[] = []

/** Messages tell of their page; whether it is still that one is asked of them. */
const NO_PAGE = 0

/** Of each part, whether the story has it first here; empty where that makes no difference. */
const choose = ({ parts, isPlain }: Saying, isFirst: IsFirst): readonly boolean[] =>
  isPlain ? ALL : parts.map(({ name }) => name === undefined || isFirst(name))

/** Notes how often the story has the words on which the messages stand. */
function finishBlock({ block, parts }: Saying, chosen: readonly boolean[], { finish, countOf }: EchoTools): Finished {
  const counts = new Map<string, number>()
  const noted: CountOf = (word) => {
    const count = countOf(word)
    counts.set(word, count)
    return count
  }
  const said = parts.flatMap(({ first, later }, at) => (chosen[at] === false ? later : first))
  const messages = toOrdered([...finish.block(said, block, noted)])
  return { chosen, counts, messages, start: block.start, page: NO_PAGE }
}

const hasChanged = (counts: Finished['counts'], { changedWords, countOf }: EchoTools): boolean =>
  counts.size > 0 && changedWords.some((word) => counts.has(word) && counts.get(word) !== countOf(word))

/** How far a page with the same blocks has moved, where that is all that has changed. */
function findPageShift(before: Pick<SaidPage, 'page' | 'starts'>, page: Page, starts: SaidPage['starts']) {
  const by = page.start - before.page.start
  const isSamePage = page.number === before.page.number && page.end - before.page.end === by
  return isSamePage && starts.every((start, at) => start - (before.starts[at] ?? 0) === by) ? by : undefined
}
