// Puts together what rules may ask: the story, the child's knowledge, and a judge that remembers.

import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Phonics } from '../phonics/types.ts'
import { type CountedWord, createWordJudge, markNames, toDifferentFigures, toFigures } from '../reading/index.ts'
import { knowledgeAt } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Sentence, Story, Word } from '../story/types.ts'
import { createFormFinder } from './spoken-form.ts'
import type { StoryContext, StoryFigures } from './types.ts'

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
}

/**
 * The context of one run over one story.
 * @throws RangeError where the sequence has no such step
 */
export function createStoryContext(
  story: Story,
  settings: ReadingSettings,
  frontMatter: Readonly<Record<string, unknown>> = {},
): StoryContext {
  const { phonics, sequence, step, reader, names = [] } = settings
  const knowledge = knowledgeAt(sequence, step)
  const judge = createJudge(story, settings)
  let figures: StoryFigures | undefined
  return {
    story,
    sequence,
    step,
    knowledge: reader === undefined ? knowledge : withReader(knowledge, reader),
    accent: phonics.accent,
    names,
    frontMatter,
    judge,
    figures: () => (figures ??= countFigures(story, judge)),
  }
}

/** A name of several words counts only where its words stand together, so there is a judge with it and one without. */
function createJudge(story: Story, settings: ReadingSettings): StoryContext['judge'] {
  const { phonics, sequence, step, reader, names = [], tagger } = settings
  const findForm = createFormFinder(story, tagger)
  const more = reader === undefined ? {} : { reader }
  const long = names.filter((name) => /\s/u.test(name.trim()))
  const short = names.filter((name) => !long.includes(name))
  const judgePlain = createWordJudge(sequence, step, { ...more, names: short })
  const judgeInName = createWordJudge(sequence, step, { ...more, names })
  const marked = new WeakMap<Sentence, ReadonlySet<Word>>()
  return (word, sentence) => {
    const readings = phonics.read(word.text)
    const form = readings.heteronym ? findForm(word, sentence) : undefined
    if (long.length === 0) return judgePlain(readings, form)
    let inName = marked.get(sentence)
    if (inName === undefined) {
      const marks = markNames(sentence.words.map(({ text }) => text), long)
      inName = new Set(sentence.words.filter((_, index) => marks[index]))
      marked.set(sentence, inName)
    }
    return inName.has(word) ? judgeInName(readings, form) : judgePlain(readings, form)
  }
}

function countFigures({ pages }: Story, judge: StoryContext['judge']): StoryFigures {
  const toCounted = (sentence: Sentence): readonly CountedWord[] =>
    sentence.words
      .filter(({ form }) => form !== 'numeral')
      .map((word) => ({ text: word.text, form: word.form, verdict: judge(word, sentence).verdict }))
  const counted = pages.map(({ blocks }) => blocks.flatMap(({ sentences }) => sentences.flatMap(toCounted)))
  const all = counted.flat()
  return { pages: counted.map(toFigures), total: toFigures(all), different: toDifferentFigures(all) }
}
