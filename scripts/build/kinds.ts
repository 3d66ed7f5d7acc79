// Reads the tables of the kinds of words and of names for stories.

import { packKinds, WORD_KINDS, type WordKind } from '../../src/words/kinds.ts'
import { readRows } from './rows.ts'

/** The rows of src/words/data/kinds.tsv, in the order of the file. */
function readKinds(): readonly (readonly [word: string, kinds: readonly WordKind[]])[] {
  return readRows('kinds.tsv').map((row) => {
    const [word = '', cell = ''] = row.split('\t')
    return [word, cell.split(',').map((name) => toKind(name, row))]
  })
}

function toKind(name: string, row: string): WordKind {
  const found = WORD_KINDS.find((one) => one === name)
  if (found === undefined) throw new Error(`kinds.tsv: there is no kind "${name}" in the row "${row}"`)
  return found
}

/** The names of src/words/data/names.tsv, in the order of the file. */
const readNames = (): readonly string[] => readRows('names.tsv')

export const buildKinds = (): Uint8Array => packKinds(readKinds())
export const buildNames = (): Uint8Array => new TextEncoder().encode(readNames().join('\n'))
