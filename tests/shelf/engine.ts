// Counting with the real words and the built-in sequence.

import { readFrontMatter } from '../../src/config/index.ts'
import { createStoryContext } from '../../src/lint/context.ts'
import type { StoryContext } from '../../src/lint/types.ts'
import { knowledgeAt } from '../../src/sequence/index.ts'
import { type Book, createLevelFinder, createReaderJudge, toBook, type Vocabulary } from '../../src/shelf/index.ts'
import { createLines, readStory } from '../../src/story/index.ts'
import { toWordKey } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readSequence } from '../unified/pipeline.ts'

export const phonics = testPhonics('general-american')
export const series = readSequence('series')

export function toContext(text: string, step: string, names: readonly string[] = []): StoryContext {
  return createStoryContext(readStory(text), { phonics, sequence: series, step, names })
}

/** A book as the command makes it, from a text with front matter. */
export async function toTestBook(path: string, text: string, vocabulary: Vocabulary): Promise<Book> {
  const story = readStory(text)
  const own = await readFrontMatter({ path, text }, story.frontMatter, [])
  const step = own.layer.step?.value
  const context = createStoryContext(story, { phonics, sequence: series, step: step ?? 'pink-1' })
  return toBook(
    {
      path,
      title: own.title?.value,
      order: own.order?.value,
      sequence: series,
      phonics,
      step,
      practises: own.practises.map(({ value }) => value),
      introduces: own.introduces.map(({ value }) => toWordKey(value)),
      names: [],
      count: context.count(),
      toPoint: createLines(text).toPoint,
      level: createLevelFinder(phonics, series).find(context.count(), [], 0.9),
      reader: step === undefined ? undefined : createReaderJudge(phonics, knowledgeAt(series, step), vocabulary),
    },
    vocabulary,
  )
}
