// What is known of each block of a story for as long as its text stays, and what is summed over all of them as blocks come
// and go.

import { hasCapital } from '../../letter-kinds.ts'
import { isSame } from '../../sorted.ts'
import type { PageHomes } from '../../story/held-pages.ts'
import type { Home } from '../../story/outline.ts'
import type { Block, Page, Sentence } from '../../story/types.ts'
import { toUseName } from '../../usage/count.ts'
import { addNameSigns, toBareName, toLikelyNames } from '../../usage/likely-names.ts'
import { LOOK_BACK, sentencesBefore } from '../../usage/spoken-form.ts'
import { toWordKey } from '../../verdict/index.ts'
import type { StoryContext, StoryFigures } from '../types.ts'
import { type Bag, createBag } from './bag.ts'
import type { SaidPage, Saying } from './saying.ts'
import { addCounts, createCounts, createDifferent, sumFigures, toSaidPage } from './sums.ts'

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

export type HomesOf = (page: Page) => PageHomes

export interface BlockFacts {
  /**
   * To be called with each version before anything else.
   * @param homesOf what stands on a page
   */
  update(pages: readonly Page[], homesOf: HomesOf, context: StoryContext): void
  likelyNames(): ReadonlySet<string>
  anyNeedsTagger(test: (block: Block) => boolean): boolean
  /** What is said of each block; asked for where that is not known. */
  say(hasTagger: boolean, ask: (block: Block, page: Page) => Saying): readonly SaidPage[]
  figures(pages: readonly SaidPage[]): StoryFigures
  countOf(word: string): number
  /** Words that are counted otherwise than when that was last forgotten. */
  changedWords(): readonly string[]
  forgetChangedWords(): void
}

const NONE: readonly Sentence[] = []

/** A block of a page, and what is known of it. */
interface Entry {
  readonly page: Page
  readonly at: number
  readonly home: Pick<Home, 'block'>
  facts: Facts
}

const blockOf = ({ page, at }: Entry): Block => page.blocks[at] as Block

export function createBlockFacts(): BlockFacts {
  const sums = createSums()
  let pages: readonly Page[] = []
  let homesOfPage: HomesOf
  let entries: readonly Entry[] = []
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

  /** Those at the two ends that are still the same keep what is known of them; gives the first that has come, and the tail. */
  const takeOver = (before: readonly Entry[], context: StoryContext) => {
    const { start, end } = compare(before, entries)
    for (let at = 0; at < start; at++) (entries[at] as Entry).facts = (before[at] as Entry).facts
    for (let at = 1; at <= end; at++) (entries.at(-at) as Entry).facts = (before.at(-at) as Entry).facts
    for (const { facts } of before.slice(start, before.length - end)) {
      forget(facts)
      sums.addWords(facts, -1)
    }
    for (const entry of entries.slice(start, entries.length - end)) {
      entry.facts = toFacts(entry.home.block, context)
      sums.addWords(entry.facts, 1)
    }
    return { start, tail: entries.length - end }
  }

  return {
    update(next, homesOf, context) {
      if (next === pages) return
      pages = next
      homesOfPage = homesOf
      const before = entries
      entries = toEntries(pages, homesOf)
      const { start, tail } = takeOver(before, context)
      const homes = entries.map(({ home }) => home.block)
      // Until all that stands before a block was there before.
      let unchanged = 0
      for (let at = start; at < entries.length && unchanged < LOOK_BACK; at++) {
        const { facts, home } = entries[at] as Entry
        lookBack(facts, sentencesBefore(homes, at))
        if (at >= tail) unchanged += home.block.sentences.length
      }
    },
    likelyNames() {
      const changed = sums.takeChangedNames()
      if (changed.length > 0)
        for (const { facts } of entries) if (changed.some((name) => facts.mayBeNames.has(name))) forget(facts)
      return sums.likelyNames()
    },
    anyNeedsTagger(test) {
      return entries.some((entry) => {
        const { facts } = entry
        facts.needsTagger ??= facts.isOpen && test(blockOf(entry))
        return facts.needsTagger
      })
    },
    say(hasTagger, ask) {
      const sayOne = (entry: Entry): Saying => {
        const { facts, page } = entry
        if (facts.isOpen && facts.hadTagger !== hasTagger) forget(facts)
        if (facts.saying === undefined) {
          facts.saying = ask(blockOf(entry), page)
          facts.hadTagger = hasTagger
          sums.addUses(facts.saying, 1)
        }
        return facts.saying
      }
      let at = 0
      return pages.map((page) => {
        const sayings: Saying[] = []
        for (; entries[at]?.page === page; at++) sayings.push(sayOne(entries[at] as Entry))
        return toSaidPage(page, sayings, homesOfPage(page).starts)
      })
    },
    figures: sums.figures,
    countOf: sums.countOf,
    changedWords: sums.changedWords,
    forgetChangedWords: sums.forgetChangedWords,
  }
}

const UNKNOWN: Facts = toFacts({ sentences: [], kind: 'heading' }, { isAlwaysPlain: () => true })

function toEntries(pages: readonly Page[], homesOf: HomesOf): readonly Entry[] {
  const entries: Entry[] = []
  for (const page of pages)
    for (const [at, home] of homesOf(page).homes.entries()) entries.push({ page, at, home, facts: UNKNOWN })
  return entries
}

function createSums() {
  const names = createNameBags()
  const words = createBag()
  const uses = createBag()
  const total = createCounts()
  const different = createDifferent()
  return {
    addWords(facts: Facts, sign: 1 | -1): void {
      names.add(facts, sign)
      for (const [word, times] of facts.words) words.add(word, sign * times)
    },
    addUses(saying: Saying, sign: 1 | -1): void {
      addCounts(total, saying.counts, sign)
      for (const use of saying.uses) {
        const name = toUseName(use)
        const isKnown = uses.has(name)
        uses.add(name, sign)
        if (isKnown !== uses.has(name)) different.add(use, sign)
      }
      uses.forgetChanges()
    },
    likelyNames: names.likely,
    takeChangedNames: names.takeChanged,
    figures: (pages: readonly SaidPage[]) => sumFigures(pages, { total, different: different.counts }),
    countOf: words.count,
    changedWords: () => words.changes().map(([word]) => word),
    forgetChangedWords: words.forgetChanges,
  }
}

/** The likely names of a story while words come and go, as `toLikelyNames` gives them. */
function createNameBags() {
  const capital = createBag()
  const small = createBag()
  let likely: ReadonlySet<string> = new Set()
  return {
    add(signs: Pick<Facts, 'capital' | 'small'>, sign: 1 | -1): void {
      for (const name of signs.capital) capital.add(name, sign)
      for (const name of signs.small) small.add(name, sign)
    },
    likely: () => likely,
    /** Names that have become likely or have ceased to be. */
    takeChanged(): readonly string[] {
      const words = takeComeAndGone(small)
      const names = takeComeAndGone(capital)
      if (words.size > 0) for (const name of capital.names()) if (words.has(name.toLowerCase())) names.add(name)
      const now = toLikelyNames([...names].filter(capital.has), small)
      const changed = [...names].filter((name) => now.has(name) !== likely.has(name))
      if (changed.length > 0) likely = new Set([...likely].filter((name) => !names.has(name)).concat([...now]))
      return changed
    },
  }
}

function takeComeAndGone(bag: Bag): Set<string> {
  const found = bag.changes().filter(([name, before]) => before > 0 !== bag.has(name))
  bag.forgetChanges()
  return new Set(found.map(([name]) => name))
}

function toFacts(
  home: Pick<Block, 'sentences' | 'kind'>,
  { isAlwaysPlain }: Pick<StoryContext, 'isAlwaysPlain'>,
): Facts {
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

/** How many blocks are still the same at the start and at the end. */
function compare(before: readonly Entry[], after: readonly Entry[]) {
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before[start]?.home === after[start]?.home) start++
  let end = 0
  while (end < most - start && before[before.length - 1 - end]?.home === after[after.length - 1 - end]?.home) end++
  return { start, end }
}
