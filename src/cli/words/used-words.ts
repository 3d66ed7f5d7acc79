// The words that the stories of a folder use.

import { toStraight } from '../../apostrophe.ts'
import { type Result, succeed } from '../../problem/index.ts'
import { readStory } from '../../story/index.ts'
import { findStories } from '../files/find.ts'
import { readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'

/** In lower case, with straight apostrophes. */
export async function findUsedWords(folder: string, io: Io): Promise<Result<ReadonlySet<string>>> {
  const found = await findStories([folder], io)
  const used = new Set<string>()
  if (found.problems.length > 0) return { ok: false, problems: found.problems }
  for (const { file, path } of found.files) {
    const text = readTextFile(file, io, path)
    if (!text.ok) return text
    for (const page of readStory(text.value).pages)
      for (const block of page.blocks)
        for (const sentence of block.sentences)
          for (const word of sentence.words) used.add(toStraight(word.text.toLowerCase()))
  }
  return succeed(used)
}
