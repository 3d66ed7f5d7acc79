// What a grown-up must know of a story's words before a child reads it: names, words that come later, sight words.

import type { GrownUpFacts } from '../print/index.ts'
import { findStep } from '../sequence/index.ts'
import type { StoryToPrint } from './types.ts'

export interface NoticedWords {
  readonly names: readonly string[]
  readonly sightWords: readonly string[]
  readonly unreadable: GrownUpFacts['unreadable']
  /** For the maker, one line. */
  readonly notices: readonly string[]
}

/** Each word once, as it is first written. */
export function findNoticedWords({ story, context, path, step, readerPath }: StoryToPrint): NoticedWords {
  const names = new Map<string, string>()
  const sight = new Map<string, string>()
  const unreadable = new Map<string, { word: string; readableAt: string | undefined }>()
  for (const { blocks } of story.pages)
    for (const { sentences } of blocks)
      for (const sentence of sentences)
        for (const word of sentence.words) {
          if (word.form !== 'word') continue
          const key = word.text.toLowerCase()
          const { verdict, readableAt } = context.judge(word, sentence)
          if (verdict.kind === 'name') names.set(key, names.get(key) ?? word.text)
          if (verdict.kind === 'sight') sight.set(key, key === 'i' ? 'I' : key)
          if (!verdict.readable && !unreadable.has(key))
            unreadable.set(key, { word: word.text, readableAt: readableAt ?? undefined })
        }
  const { size } = unreadable
  const notices =
    size === 0
      ? []
      : [
          `${size} ${size === 1 ? 'word' : 'words'} of ${path} cannot be read at ${step}. To see where: battledore check ${path}${readerPath === undefined ? '' : ` --reader ${readerPath}`}`,
        ]
  return { names: [...names.values()], sightWords: [...sight.values()], unreadable: [...unreadable.values()], notices }
}

/** All that the last page says, but for how it is bound. */
export function toFacts(
  story: StoryToPrint,
  title: string,
  { names, sightWords, unreadable }: NoticedWords,
): Omit<GrownUpFacts, 'isStapled' | 'hasPictures'> {
  const { sequence, step, context, own } = story
  const { words, readableShare } = context.figures().total
  const found = findStep(sequence, step)
  return {
    title,
    step: `Step ${step} (${found?.title ?? step}) of ${sequence.title}`,
    words,
    share: readableShare,
    names,
    unreadable,
    sightWords,
    practises: own.practises.map(({ value }) => value),
    notes: story.story.notes.map(({ page, text, kind }) => ({
      page: kind === 'credits' ? undefined : page,
      text,
    })),
  }
}
