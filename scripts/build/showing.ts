// Reads the table of what small children say of things and pictures.

import { packShowing, SHOWN_CLASSES, type Shown, type ShownClass } from '../../src/words/showing.ts'
import { readRows } from './rows.ts'

export interface ShowingRow extends Shown {
  readonly word: string
  readonly reason: string
}

/** The rows of src/words/data/showing.tsv, in the order of the file. */
export function readShowing(): readonly ShowingRow[] {
  return readRows('showing.tsv').map((row) => {
    const [word = '', object, picture, note = '', reason = ''] = row.split('\t')
    if (word === '' || reason === '') throw new Error(`showing.tsv: cannot read the row "${row}"`)
    return { word, object: toClass(object, row), picture: toClass(picture, row), note, reason }
  })
}

function toClass(cell: string | undefined, row: string): ShownClass {
  const found = SHOWN_CLASSES.find((one) => one === cell)
  if (found === undefined) throw new Error(`showing.tsv: there is no class "${cell}" in the row "${row}"`)
  return found
}

export const buildShowing = (): Uint8Array => packShowing(readShowing().map((row) => [row.word, row]))
