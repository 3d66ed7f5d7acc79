// What the synthesiser said of many words, kept in a file: asking it takes minutes, comparing takes none.

import { readFileSync } from 'node:fs'

export interface Synthesised {
  readonly words: readonly string[]
  readonly said: readonly string[]
}

const FILE = new URL('../../tests/phonics/data/synthesiser.tsv', import.meta.url)

export function readSynthesised(): Synthesised {
  const [, , ...lines] = readFileSync(FILE, 'utf8').trimEnd().split('\n')
  const rows = lines.map((line) => line.split('\t'))
  return { words: rows.map(([word = '']) => word), said: rows.map(([, sounds = '']) => sounds) }
}
