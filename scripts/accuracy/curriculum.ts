// Counts the example words of England's curriculum whose letters say the sound of their row.

import { readFileSync } from 'node:fs'
import type { RawUnit } from '../../src/phonics/raw.ts'
import type { Spelling } from '../../src/phonics/spelling.ts'

/** One word of the curriculum with the letters and the sound of its row. */
export interface CurriculumRow {
  readonly word: string
  /** As the source writes it: `a-e`, `igh`. */
  readonly grapheme: string
  /** ARPAbet; any of them will do. */
  readonly sounds: readonly string[]
}

const WORDS = new URL('../../tests/phonics/data/curriculum-words.tsv', import.meta.url)

export function readCurriculum(): readonly CurriculumRow[] {
  const lines = readFileSync(WORDS, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
  return lines.slice(1).map((line) => {
    const [word = '', , , grapheme = '', , sounds = ''] = line.split('\t')
    return { word, grapheme, sounds: sounds.split('|') }
  })
}

/** Whether consecutive units cover exactly the row's letters and say exactly its sound, in any pronunciation of the word. */
export function isRowMet(row: CurriculumRow, spelling: Spelling): boolean {
  const grapheme = row.grapheme.replace('-', '_')
  return spelling.spell(row.word.toLowerCase()).cuttings.some(({ raw }) => hasRun(raw.units, grapheme, row.sounds))
}

function hasRun(units: readonly RawUnit[], grapheme: string, sounds: readonly string[]): boolean {
  return units.some((_, from) => {
    for (let to = from + 1; to <= units.length && to <= from + 3; to++) {
      const run = units.slice(from, to)
      const says = run.flatMap(({ phones }) => phones).join(' ')
      // `cared` has the `are` of `care`: its e belongs to the ending now.
      if (
        sounds.includes(says) &&
        [run.map(({ letters }) => letters), run.map((unit) => unit.base ?? unit.letters)].some(
          (parts) => parts.join('') === grapheme,
        )
      )
        return true
    }
    return false
  })
}

/** The rows that fail, of how many. */
export function measureCurriculum(spelling: Spelling): {
  readonly rows: number
  readonly failed: readonly CurriculumRow[]
} {
  const rows = readCurriculum()
  return { rows: rows.length, failed: rows.filter((row) => !isRowMet(row, spelling)) }
}
