// The table of correspondences as data: which letters may say which sounds.

import { isVowel } from './arpabet.ts'

/** One row of the table: a grapheme and one of its sounds. */
export interface Row {
  readonly id: number
  /** As written in the table: `sh`, `a_e`. */
  readonly letters: string
  /** The letters at its start: `sh`, and `a` for `a_e`. */
  readonly head: string
  /** True for `a_e`, which a silent e closes after one or two consonant rows. */
  readonly split: boolean
  /** ARPAbet sounds; none for silent letters. */
  readonly phones: readonly string[]
  readonly vowel: boolean
  readonly example: string
}

/** Reads the table: a row a line, `letters`, sounds and example parted by tabs; `#` opens a comment. */
export function readRows(table: string): Row[] {
  const rows: Row[] = []
  for (const line of table.split('\n')) {
    if (line === '' || line.startsWith('#')) continue
    const [letters = '', sounds = '', example = ''] = line.split('\t')
    const phones = sounds === '-' ? [] : sounds.split(' ')
    const split = letters.includes('_')
    rows.push({
      id: rows.length,
      letters,
      head: split ? letters.slice(0, letters.indexOf('_')) : letters,
      split,
      phones,
      vowel: phones.some(isVowel),
      example,
    })
  }
  return rows
}
