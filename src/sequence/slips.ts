// Slips that are no mistake of form, each told with the nearest right thing: a step that is another's but for a dash, words
// that are no words.

import { findSlip } from '../phonics/slip.ts'
import type { Phonics } from '../phonics/types.ts'
import type { Problem } from '../problem/index.ts'
import type { StepFile } from './schema.ts'
import type { Path, Source } from './source.ts'

/** `pink1`, `Pink_01` and `pink-1` are one to a hasty hand. */
const toPlainId = (id: string): string =>
  id
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/(?<!\p{N})0+(?=\p{N})/gu, '')

/** The step of the extended sequence that a new one was most likely to be. */
export function findMeantStep(id: string, ids: readonly string[]): string | undefined {
  return ids.find((other) => other !== id && toPlainId(other) === toPlainId(id))
}

/** Sight words and contractions that are most likely misspelt. A word with a capital is taken for a name. */
export function findMisspelt(own: StepFile, path: Path, source: Source, phonics: Phonics): readonly Problem[] {
  return (['sight words', 'contractions'] as const).flatMap((key) => {
    const written = own[key] ?? []
    if (written === 'any') return []
    return [...written.entries()].flatMap(([at, word]) => {
      const suggestion = word === word.toLowerCase() ? findSlip(word, phonics) : undefined
      if (suggestion === undefined) return []
      const message = `\`${word}\` is not a word that the dictionary knows`
      // A maker's own word is never refused.
      const found = { code: 'unknown-name', severity: 'warning', message, expected: [suggestion] } as const
      return [source.problemAt([...path, key, at], found)]
    })
  })
}
