// The words that the stories of a folder use.

import { readStory } from '../../story/index.ts'
import { findStories } from '../files/find.ts'
import { readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'

/** In lower case, with straight apostrophes. */
export async function findUsedWords(
  folder: string,
  io: Io,
): Promise<ReadonlySet<string> | { readonly problem: string }> {
  const found = await findStories([folder], io)
  const used = new Set<string>()
  for (const problem of found.problems) return { problem }
  for (const { file, path } of found.files) {
    const text = readTextFile(file, io, path)
    if (!text.ok) return { problem: text.message }
    for (const page of readStory(text.text).pages)
      for (const block of page.blocks)
        for (const sentence of block.sentences)
          for (const word of sentence.words) used.add(word.text.toLowerCase().replaceAll('’', "'"))
  }
  return used
}
