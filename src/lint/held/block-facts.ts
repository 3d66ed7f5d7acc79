// What is known of each block of a story for as long as its text stays, and what is summed over all of them as blocks come
// and go.

import { isSame } from '../../sorted.ts'
import type { Block, Page, Sentence } from '../../story/types.ts'
import { toUseName } from '../../usage/count.ts'
import { addNameSigns, hasCapital, toBareName, toLikelyNames } from '../../usage/likely-names.ts'
import { LOOK_BACK, sentencesBefore } from '../../usage/spoken-form.ts'
import { toWordKey } from '../../verdict/index.ts'
import type { StoryContext } from '../types.ts'
import { createBag } from './bag.ts'
import type { JudgedUse, Saying } from './saying.ts'
import type { SaidBlock, SaidPage } from './sums.ts'

/** A block as it stands, and as it was first read. */
interface HeldBlock {
  readonly block: Block
  readonly home: Block
}

export interface HeldPage {
  readonly page: Page
  readonly blocks: readonly HeldBlock[]
}

interface Facts {
  readonly capital: ReadonlySet<string>
  readonly small: ReadonlySet<string>
  /** All its words with a capital: whether they are likely names may make a difference. */
  readonly mayBeNames: ReadonlySet<string>
  /** How often it has each word, numerals among them. */
  readonly words: ReadonlyMap<string, number>
  /** Whether what stands before it may make a difference: it has a word whose sense is not always the same. */
  readonly isOpen: boolean
  /** The sentences before an open block. */
  before: readonly Sentence[]
  needsTagger: boolean | undefined
  saying: Saying | undefined
  /** Whether there was a tagger when it was said. */
  hadTagger: boolean
}

export interface BlockFacts {
  /** To be called with each version before anything else. */
  update(pages: readonly HeldPage[], context: StoryContext): void
  likelyNames(): ReadonlySet<string>
  anyNeedsTagger(test: (block: Block) => boolean): boolean
  /** What is said of each block; asked for where that is not known. */
  say(hasTagger: boolean, ask: (block: Block, page: Page) => Saying): readonly SaidPage[]
  /** Each use of a word once. */
  uses(): Iterable<JudgedUse>
  countOf(word: string): number
}

const NONE: readonly Sentence[] = []

export function createBlockFacts(): BlockFacts {
  const known = new WeakMap<Block, Facts>()
  const sums = createSums()
  let pages: readonly HeldPage[] = []
  let blocks: readonly HeldBlock[] = []
  let likely: ReadonlySet<string> = new Set()
  const factsOf = ({ home }: HeldBlock): Facts => known.get(home) as Facts
  const forget = (facts: Facts): void => {
    if (facts.saying) sums.addUses(facts.saying, -1)
    facts.saying = undefined
  }

  const lookBack = (facts: Facts, before: readonly Sentence[]): void => {
    if (!facts.isOpen || isSame(before, facts.before)) return
    facts.before = before
    facts.needsTagger = undefined
    forget(facts)
  }

  return {
    update(next, context) {
      if (next === pages) return
      pages = next
      const before = blocks
      blocks = pages.flatMap((page) => page.blocks)
      const { start, tail, gone, come } = compare(before, blocks)
      for (const one of gone) {
        forget(factsOf(one))
        sums.addWords(factsOf(one), -1)
      }
      for (const one of come) {
        const facts = toFacts(one.home, context)
        known.set(one.home, facts)
        sums.addWords(facts, 1)
      }
      const homes = blocks.map(({ home }) => home)
      // Until all that stands before a block was there before.
      let unchanged = 0
      for (const [index, one] of blocks.slice(start).entries()) {
        if (unchanged >= LOOK_BACK) break
        lookBack(factsOf(one), sentencesBefore(homes, start + index))
        if (start + index >= tail) unchanged += one.home.sentences.length
      }
    },
    likelyNames() {
      const now = sums.likelyNames()
      const changed = [...now, ...likely].filter((name) => now.has(name) !== likely.has(name))
      likely = now
      if (changed.length === 0) return likely
      for (const facts of blocks.map(factsOf)) if (changed.some((name) => facts.mayBeNames.has(name))) forget(facts)
      return likely
    },
    anyNeedsTagger(test) {
      return blocks.some((one) => {
        const facts = factsOf(one)
        facts.needsTagger ??= facts.isOpen && test(one.block)
        return facts.needsTagger
      })
    },
    say(hasTagger, ask) {
      const sayOne = (one: HeldBlock, page: Page): SaidBlock => {
        const facts = factsOf(one)
        if (facts.isOpen && facts.hadTagger !== hasTagger) forget(facts)
        if (facts.saying === undefined) {
          facts.saying = ask(one.block, page)
          facts.hadTagger = hasTagger
          sums.addUses(facts.saying, 1)
        }
        return { block: one.block, saying: facts.saying }
      }
      return pages.map(({ page, blocks: own }) => ({ page, blocks: own.map((one) => sayOne(one, page)) }))
    },
    uses: sums.uses,
    countOf: sums.countOf,
  }
}

function createSums() {
  const capital = createBag()
  const small = createBag()
  const words = createBag()
  const uses = new Map<string, { use: JudgedUse; count: number }>()
  return {
    addWords(facts: Facts, sign: 1 | -1): void {
      for (const name of facts.capital) capital.add(name, sign)
      for (const name of facts.small) small.add(name, sign)
      for (const [word, times] of facts.words) words.add(word, sign * times)
    },
    addUses(saying: Saying, sign: 1 | -1): void {
      for (const use of saying.uses) {
        const name = toUseName(use)
        const count = (uses.get(name)?.count ?? 0) + sign
        if (count === 0) uses.delete(name)
        else uses.set(name, { use, count })
      }
    },
    likelyNames: () => toLikelyNames(capital.names(), small),
    uses: () => [...uses.values()].map(({ use }) => use),
    countOf: words.count,
  }
}

function toFacts(home: Block, { isAlwaysPlain }: StoryContext): Facts {
  const signs = { capital: new Set<string>(), small: new Set<string>() }
  addNameSigns(home, signs)
  const words = new Map<string, number>()
  const mayBeNames = new Set<string>()
  let isOpen = false
  for (const sentence of home.sentences) {
    for (const { text } of sentence.words) {
      const word = toWordKey(text)
      words.set(word, (words.get(word) ?? 0) + 1)
      if (hasCapital(text)) mayBeNames.add(toBareName(text))
      isOpen ||= !isAlwaysPlain(text)
    }
  }
  return {
    ...signs,
    mayBeNames,
    words,
    isOpen,
    before: NONE,
    needsTagger: undefined,
    saying: undefined,
    hadTagger: false,
  }
}

/** What is gone and what has come, between the blocks at the two ends that are still the same: the tail is one of them. */
function compare(before: readonly HeldBlock[], after: readonly HeldBlock[]) {
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before[start]?.home === after[start]?.home) start++
  let end = 0
  while (end < most - start && before.at(-1 - end)?.home === after.at(-1 - end)?.home) end++
  const tail = after.length - end
  return { start, tail, gone: before.slice(start, before.length - end), come: after.slice(start, tail) }
}
