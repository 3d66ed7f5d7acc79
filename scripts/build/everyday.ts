// Reads the table of words that children meet and that the frequency list or WordNet loses.

import { LITTLE_WORDS } from '../../src/words/little.ts'
import { readRows } from './rows.ts'

export interface EverydayRow {
  readonly word: string
  /** Where WordNet has no entry. */
  readonly part: 'noun' | 'adjective' | undefined
  readonly known: 0 | 1 | 2 | 3
  readonly why: string
}

/** The rows of src/words/data/everyday.tsv, in the order of the file. */
export function readEveryday(): readonly EverydayRow[] {
  return readRows('everyday.tsv').map((row) => {
    const [word = '', part = '', known = '', why = ''] = row.split('\t')
    if (word === '' || why === '' || !/^(?:noun|adjective|)$/.test(part) || !/^[123]$/.test(known))
      throw new Error(`everyday.tsv: cannot read the row "${row}"`)
    return { word, part: part === '' ? undefined : (part as 'noun' | 'adjective'), known: toGrade(known), why }
  })
}

const toGrade = (known: string): EverydayRow['known'] => (known === '1' ? 1 : known === '2' ? 2 : 3)

/** The words of src/words/data/grown-up.tsv. */
export const readGrownUp = (): ReadonlySet<string> =>
  new Set(readRows('grown-up.tsv').map((row) => row.split('\t')[0] ?? ''))

/** By word; the little words are as much words as those of the table, whatever capital they are met with: `Hey`. */
export const loadEveryday = (): ReadonlyMap<string, EverydayRow> =>
  new Map([
    ...LITTLE_WORDS.map(
      ([word]) => [word, { word, part: undefined, known: 0, why: 'a little word' } as const] as const,
    ),
    ...readEveryday().map((row) => [row.word, row] as const),
  ])
