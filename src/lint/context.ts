// Puts together what rules may ask: the story, the child's knowledge, and a judge that remembers.

import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import { remember } from '../phonics/remember.ts'
import { findSlips } from '../phonics/slip.ts'
import type { Phonics } from '../phonics/types.ts'
import { knowledgeAt } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Story } from '../story/types.ts'
import { countStory, type FindSense, type StoryCount, type WordSet, type WordUse } from '../usage/count.ts'
import { findLikelyNames } from '../usage/likely-names.ts'
import { isLongName } from '../usage/long-names.ts'
import { createSenseFinder } from '../usage/sense.ts'
import {
  type CountedWord,
  createTally,
  createWordJudge,
  toDifferentFigures,
  toFigures,
  type WordJudge,
} from '../verdict/index.ts'
import type { Figures, JudgedWord, Verdict } from '../verdict/types.ts'
import { createNameTest, findSharedJudge } from './shared-judge.ts'
import type { Familiarity, FindUnfit, Lists, StoryContext, StoryFigures } from './types.ts'

/** Who reads, and how words are said. */
export interface ReadingSettings {
  readonly phonics: Phonics
  readonly sequence: Sequence
  /** The id of a step of the sequence. */
  readonly step: string
  /** Names that the story allows, as written. */
  readonly names?: readonly string[]
  /** What the child knows beyond or short of the step. */
  readonly reader?: ReaderExtra
  /** Settles the heteronyms that small words leave open; see `isTaggerNeeded`. */
  readonly tagger?: Tagger
  /** What earlier books of the shelf have used. */
  readonly earlierWords?: WordSet
  readonly familiarity?: Familiarity
  readonly findUnfit?: FindUnfit
}

/**
 * The context of one run over one story.
 * @throws RangeError where the sequence has no such step
 */
export function createStoryContext(
  story: Story,
  settings: ReadingSettings,
  frontMatter: Readonly<Record<string, unknown>> = {},
  lists: Lists = {},
): StoryContext {
  const { phonics, sequence, step, reader, names = [], earlierWords, familiarity, findUnfit } = settings
  const knowledge = knowledgeAt(sequence, step)
  const findSense = createSenseFinder(story, names, phonics.heteronyms, settings.tagger)
  const judge = createJudge(settings, findSense)
  let counted: StoryCount | undefined
  const count = (): StoryCount => (counted ??= countStory(story, findSense))
  let figures: StoryFigures | undefined
  let likelyNames: ReadonlySet<string> | undefined
  return {
    story,
    sequence,
    step,
    knowledge: reader === undefined ? knowledge : withReader(knowledge, reader),
    accent: phonics.accent,
    names,
    frontMatter,
    lists,
    judge,
    isAlwaysPlain: findSense.isAlwaysPlain,
    count,
    countIn: (pages) => countStory({ pages }, findSense),
    figures: () => (figures ??= toStoryFigures(count(), judge)),
    earlierWords,
    familiarity,
    findUnfit,
    findSlips: createSlipFinder(settings),
    likelyNames: () => (likelyNames ??= findLikelyNames(story)),
  }
}

/** By the judge that stories share. */
const slips = new WeakMap<WordJudge, StoryContext['findSlips']>()

/** A slip is looked for once, however often stories have it. */
function createSlipFinder({ phonics, sequence, step, reader }: ReadingSettings): StoryContext['findSlips'] {
  const judge = findSharedJudge(phonics, sequence, step, reader)
  const isReadable = (candidate: string): boolean => judge(phonics.read(candidate)).verdict.readable
  const find = slips.get(judge) ?? remember((text) => findSlips(text, phonics, { isBetter: isReadable }))
  slips.set(judge, find)
  return find
}

/** Words that are no names share their verdicts with other stories. A name of several words counts only where they stand together. */
function createJudge(settings: ReadingSettings, findSense: FindSense): StoryContext['judge'] {
  const { phonics, sequence, step, reader, names = [] } = settings
  const judgePlain = findSharedJudge(phonics, sequence, step, reader)
  const judgeName = createWordJudge(sequence, step, { ...(reader === undefined ? {} : { reader }), names })
  const isShortName = createNameTest(names.filter((name) => !isLongName(name)))
  const known = new Map<string, JudgedWord>()
  return (word, sentence) => {
    const before = known.get(word.text)
    if (before !== undefined) return before
    const { spoken, isInName } = findSense(word, sentence)
    const judge = isInName || isShortName(word.text) ? judgeName : judgePlain
    const judged = judge(phonics.read(word.text), spoken)
    if (findSense.isAlwaysPlain(word.text)) known.set(word.text, judged)
    return judged
  }
}

function toStoryFigures({ pages, uses }: StoryCount, judge: StoryContext['judge']): StoryFigures {
  const verdicts = new Map<WordUse, Verdict>()
  const all = uses.map((use): CountedWord => {
    const { text, key, form, times } = use
    const { verdict } = judge(use.word, use.sentence)
    verdicts.set(use, verdict)
    return { text, key, form, verdict, times }
  })
  const toPage = (counts: ReadonlyMap<WordUse, number>): Figures => {
    const tally = createTally()
    counts.forEach((times, use) => {
      tally.add(use.form, verdicts.get(use)?.kind ?? 'unreadable', times)
    })
    return tally.figures()
  }
  return { pages: pages.map((page) => toPage(page.uses)), total: toFigures(all), different: toDifferentFigures(all) }
}
