// Says again what was said of blocks and pages, each where it stands now.

import { isSame } from '../../sorted.ts'
import type { Block, Page } from '../../story/types.ts'
import type { MadeRules } from '../made-rules.ts'
import type { Message } from '../types.ts'
import type { IsFirst } from '../word-faults.ts'
import { moveMessages, type Saying } from './saying.ts'
import type { SaidBlock, SaidPage } from './sums.ts'

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
}

/** Messages of one block as they were last finished, and what that stood on. */
interface Finished {
  /** As `choose` gives it. */
  readonly chosen: readonly boolean[]
  readonly counts: ReadonlyMap<string, number>
  readonly messages: readonly Message[]
  placed: { readonly by: number; readonly page: number; readonly messages: readonly Message[] } | undefined
}

interface PageSaying {
  readonly page: Page
  readonly blocks: readonly SaidBlock[]
  readonly messages: readonly Message[]
}

/** Remembers how each block and page was last said. */
export function createEcho(): (pages: readonly SaidPage[], tools: EchoTools) => Message[] {
  const finished = new WeakMap<Saying, Finished>()
  const ofPages = new WeakMap<Saying, PageSaying>()

  function echoBlock({ block, saying }: SaidBlock, page: number, tools: EchoTools): readonly Message[] {
    const chosen = choose(saying, tools.isFirst)
    let known = finished.get(saying)
    if (known === undefined || !isSame(chosen, known.chosen) || !areCounts(known.counts, tools.countOf)) {
      known = finishBlock(saying, chosen, tools)
      finished.set(saying, known)
    }
    const by = block.start - saying.block.start
    if (known.placed?.by !== by || known.placed.page !== page)
      known.placed = { by, page, messages: moveMessages(known.messages, by, page) }
    return known.placed.messages
  }

  function echoPage(said: SaidPage, { made }: EchoTools): readonly Message[] {
    const key = said.blocks[0]?.saying
    const before = key && ofPages.get(key)
    const by = before && findPageShift(before, said)
    if (before && by !== undefined) return moveMessages(before.messages, by, said.page.number)
    made.page(said.page)
    const messages = made.take()
    if (key) ofPages.set(key, { ...said, messages })
    return messages
  }

  return (pages, tools) => {
    const all: Message[] = []
    for (const said of pages) {
      for (const message of tools.finish.loose(echoPage(said, tools), tools.countOf)) all.push(message)
      for (const block of said.blocks)
        for (const message of echoBlock(block, said.page.number, tools)) all.push(message)
    }
    return all
  }
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
  return { chosen, counts, messages: finish.block(said, block, noted), placed: undefined }
}

function areCounts(counts: ReadonlyMap<string, number>, countOf: CountOf): boolean {
  for (const [word, count] of counts) if (countOf(word) !== count) return false
  return true
}

/** How far a page has moved, where that is all that has changed. */
function findPageShift(before: PageSaying, { page, blocks }: SaidPage): number | undefined {
  const by = page.start - before.page.start
  const isSamePage = page.number === before.page.number && page.end - before.page.end === by
  const areSame = ({ block, saying }: SaidBlock, at: number): boolean =>
    saying === before.blocks[at]?.saying && block.start - before.blocks[at].block.start === by
  return isSamePage && blocks.length === before.blocks.length && blocks.every(areSame) ? by : undefined
}
