// Says again what was said of blocks and pages, each where it stands now.

import { isSame } from '../../sorted.ts'
import type { Block } from '../../story/types.ts'
import type { MadeRules } from '../made-rules.ts'
import { toOrdered } from '../message.ts'
import type { Message } from '../types.ts'
import type { IsFirst } from '../word-faults.ts'
import { type Finished, moveMessages, type SaidBlock, type SaidPage, type Saying } from './saying.ts'

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

/** Messages in the order of their pages and blocks, those of each block in order of place. */
export function echo(pages: readonly SaidPage[], tools: EchoTools): Message[] {
  const all: Message[] = []
  for (const said of pages) {
    for (const message of tools.finish.loose(echoPage(said, tools), tools.countOf)) all.push(message)
    for (const block of said.blocks) for (const message of echoBlock(block, said.page.number, tools)) all.push(message)
  }
  return all
}

function echoBlock({ block, saying }: SaidBlock, page: number, tools: EchoTools): readonly Message[] {
  const chosen = choose(saying, tools.isFirst)
  const { memory } = saying
  let known = memory.finished
  if (known === undefined || !isSame(chosen, known.chosen) || hasChanged(known.counts, tools))
    known = memory.finished = finishBlock(saying, chosen, tools)
  const by = block.start - saying.block.start
  if (known.placed?.by !== by || known.placed.page !== page)
    known.placed = { by, page, messages: moveMessages(known.messages, by, page) }
  return known.placed.messages
}

function echoPage(said: SaidPage, { made }: EchoTools): readonly Message[] {
  const memory = said.blocks[0]?.saying.memory
  const before = memory?.page
  const by = before && findPageShift(before, said)
  if (before && by !== undefined) return moveMessages(before.messages, by, said.page.number)
  made.page(said.page)
  const messages = made.take()
  if (memory) memory.page = { ...said, messages }
  return messages
}

const ALL: readonly boolean[] = []

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
  return { chosen, counts, messages: toOrdered([...finish.block(said, block, noted)]), placed: undefined }
}

const hasChanged = (counts: Finished['counts'], { changedWords, countOf }: EchoTools): boolean =>
  counts.size > 0 && changedWords.some((word) => counts.has(word) && counts.get(word) !== countOf(word))

/** How far a page has moved, where that is all that has changed. */
function findPageShift(before: SaidPage, { page, blocks }: SaidPage): number | undefined {
  const by = page.start - before.page.start
  const isSamePage = page.number === before.page.number && page.end - before.page.end === by
  const areSame = ({ block, saying }: SaidBlock, at: number): boolean =>
    saying === before.blocks[at]?.saying && block.start - before.blocks[at].block.start === by
  return isSamePage && blocks.length === before.blocks.length && blocks.every(areSame) ? by : undefined
}
