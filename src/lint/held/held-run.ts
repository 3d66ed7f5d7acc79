// Runs rules over the versions of one story: blocks that have not changed are not asked about again.

import type { Heteronyms } from '../../phonics/heteronyms/types.ts'
import { isSame } from '../../sorted.ts'
import type { Page, Story } from '../../story/types.ts'
import type { StoryCount } from '../../usage/count.ts'
import { createTaggerTest } from '../../usage/spoken-form.ts'
import { makeRules } from '../made-rules.ts'
import { toOrdered } from '../message.ts'
import { applySwitches } from '../run.ts'
import type { Message, Rule, RuleSettings, StoryContext, StoryFigures } from '../types.ts'
import { createFirstTest } from '../word-faults.ts'
import { createBlockFacts, type HomesOf } from './block-facts.ts'
import { echo, type Finish } from './echo.ts'
import { createAsker, type SaidPage, sayBlock } from './saying.ts'
import { sumCounts } from './sums.ts'

export interface HeldRun {
  /**
   * To be called with each version before anything else.
   * @param homesOf what stands on a page of the story
   * @param settings all that verdicts and rules stand on, by identity: where any of it changes, everything is asked anew
   */
  open(story: Story, homesOf: HomesOf, settings: readonly unknown[]): void
  /** As `isTaggerNeeded`; `plain` is the context without a tagger. */
  isTaggerNeeded(plain: StoryContext, heteronyms: Heteronyms): boolean
  /** What `runRules` and the figures of the context say. */
  run(context: StoryContext, rules: readonly Rule[], settings: RuleSettings, tools: RunTools): HeldResult
}

interface RunTools {
  readonly hasTagger: boolean
  readonly finish: Finish
}

interface HeldResult {
  readonly messages: readonly Message[]
  readonly figures: StoryFigures
}

export function createHeldRun(): HeldRun {
  let facts = createBlockFacts()
  let settled: readonly unknown[] = []
  let pages: readonly Page[] = []
  let homesOf: HomesOf
  return {
    open(story, toHomes, settings) {
      if (!isSame(settings, settled)) {
        facts = createBlockFacts()
        settled = settings
      }
      pages = story.pages
      homesOf = toHomes
    },
    isTaggerNeeded(plain, heteronyms) {
      facts.update(pages, homesOf, plain)
      return facts.anyNeedsTagger(createTaggerTest(plain.story, heteronyms, plain))
    },
    run(context, rules, settings, { hasTagger, finish }) {
      facts.update(pages, homesOf, context)
      const likely = facts.likelyNames()
      let said: readonly SaidPage[] = []
      let figures: StoryFigures | undefined
      let count: StoryCount | undefined
      const toFigures = (): StoryFigures => (figures ??= facts.figures(said))
      const own: StoryContext = {
        ...context,
        likelyNames: () => likely,
        count: () => (count ??= sumCounts(said)),
        figures: toFigures,
      }
      const asker = createAsker()
      const isFirst = createFirstTest()
      let isAsking = true
      const made = makeRules(own, rules, settings, (name) => (isAsking ? asker.isFirst(name) : isFirst(name)))
      said = facts.say(hasTagger, (block, page) => sayBlock(block, page, { made, asker, context: own }))
      isAsking = false
      const { countOf } = facts
      const ofBlocks = echo(said, { made, finish, isFirst, countOf, changedWords: facts.changedWords() })
      facts.forgetChangedWords()
      made.story(context.story)
      const ofStory = finish.loose(made.take(), countOf)
      const all = ofStory.length === 0 ? ofBlocks : toOrdered([...ofBlocks, ...ofStory])
      const kept = applySwitches(own, rules, made, all)
      return { messages: kept === all ? all : toOrdered(kept), figures: toFigures() }
    },
  }
}
