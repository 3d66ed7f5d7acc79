// Words cut into syllables by hand before the program was asked: how many does it cut so, at the first look and now?

import { readFileSync } from 'node:fs'
import type { Phonics } from '../../src/phonics/types.ts'
import { readRows } from './read-rows.ts'

export interface JudgedCut {
  readonly half: string
  readonly word: string
  /** As teachers may cut it. */
  readonly cuts: readonly string[]
  /** What the program said when it was first asked, where that was none of them. */
  readonly firstLook: string | undefined
}

export function readJudgedCuts(): readonly JudgedCut[] {
  const file = new URL('../../tests/phonics/data/syllables-judged.tsv', import.meta.url)
  return readRows(readFileSync(file, 'utf8'))
    .slice(1)
    .map((row) => {
      const [half = '', cut = '', firstLook = ''] = row.split('\t')
      const cuts = cut.split('/')
      return { half, word: (cuts[0] ?? '').replaceAll('-', ''), cuts, firstLook: firstLook || undefined }
    })
}

/** The words that are cut otherwise now, as the program cuts them. */
export const findOtherCuts = (judged: readonly JudgedCut[], phonics: Phonics): readonly string[] =>
  judged.flatMap(({ word, cuts }) => {
    const ours = phonics.read(word).pronunciations[0]?.syllables.join('-') ?? ''
    return cuts.includes(ours) ? [] : [ours]
  })
