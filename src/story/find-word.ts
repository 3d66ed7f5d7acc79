// The word, or the block, at an offset of a story.

import type { Block, Sentence, Story, Word } from './types.ts'

export interface FoundWord {
  readonly word: Word
  readonly sentence: Sentence
}

/** A caret behind the last letter still counts. */
export function findWord(story: Story, offset: number): FoundWord | undefined {
  for (const sentence of findBlock(story, offset)?.sentences ?? []) {
    const word = sentence.words.find(({ start, end }) => start <= offset && offset <= end)
    if (word) return { word, sentence }
  }
  return undefined
}

export function findBlock({ pages, title }: Story, offset: number): Block | undefined {
  const blocks = [...(title ? [title] : []), ...pages.flatMap((page) => page.blocks)]
  return blocks.find(({ start, end }) => start <= offset && offset <= end)
}
