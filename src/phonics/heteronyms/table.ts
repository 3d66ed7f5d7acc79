// The heteronyms of general and children's English, found by spelling in the text that the lexicon file holds.
//
// The rows are written in data/*.yaml and checked when the package is built. In the file each is one line: its word, a tab,
// the row as JSON. A row is parsed when its word is first met, so that opening costs nothing for the others.

import { openWeights } from './learned/weights.ts'
import type { Heteronym, Heteronyms } from './types.ts'

const NONE = new Uint8Array()

export const NO_HETERONYMS: Heteronyms = { find: () => undefined }

/** @param weights as `openWeights` reads them; empty for a table without a model */
export function openHeteronyms(text: string, weights: Uint8Array = NONE): Heteronyms {
  const lines = new Map<string, string>()
  const rows = new Map<string, Heteronym>()
  for (const line of text.split('\n')) {
    const tab = line.indexOf('\t')
    if (tab > 0) lines.set(line.slice(0, tab), line)
  }
  return {
    ...(weights.length > 0 && { weigh: openWeights(weights) }),
    find(word) {
      const key = word.toLowerCase()
      const line = lines.get(key)
      if (line === undefined) return undefined
      const known = rows.get(key) ?? (JSON.parse(line.slice(key.length + 1)) as Heteronym)
      rows.set(key, known)
      return known
    },
  }
}

/** Without what only the files need. */
export const writeHeteronyms = (rows: readonly Heteronym[]): string =>
  rows.map((row) => `${row.word}\t${JSON.stringify(row, withoutExample)}`).join('\n')

const withoutExample = (key: string, value: unknown): unknown =>
  key === 'example' || key === 'note' ? undefined : value
