// A story as plain values, for comparing two of them.

import type { Block, Story } from '../../src/story/index.ts'

/** Plain values: functions are asked, and a sentence's way back to its block is left out. */
export function toPlain(story: Story): unknown {
  const toBlock = ({ sentences, toSource, ...block }: Block) => ({
    ...block,
    places: [...block.text].map((_, at) => toSource(at)).concat(toSource(block.text.length)),
    sentences: sentences.map(({ block: _, words, ...sentence }) => ({
      ...sentence,
      words: words.map((word) => ({ ...word, letters: [...word.text].map((_, at) => word.toSource(at, at + 1)) })),
    })),
  })
  const { title, pages, notes, ...rest } = story
  return {
    ...rest,
    title: title && toBlock(title),
    pages: pages.map((page) => ({ ...page, blocks: page.blocks.map(toBlock) })),
    notes: notes.map(({ toSource, ...note }) => ({ ...note, places: [...note.text].map((_, at) => toSource(at)) })),
  }
}
