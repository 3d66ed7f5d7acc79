// Much used words whose first readable step was judged by hand before the program was asked: how many agree, at the first look and now?

import { readFileSync } from 'node:fs'
import type { Phonics } from '../../src/phonics/types.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { type Engine, openSequence } from './engine.ts'
import { toPercent } from './percent.ts'
import { readRows } from './read-rows.ts'
import type { Row } from './rows.ts'

export interface JudgedStep {
  readonly word: string
  /** The id of a step of the series, or `never`. */
  readonly step: string
  readonly firstLook: string | undefined
}

export function readJudgedSteps(): readonly JudgedStep[] {
  const file = new URL('../../tests/verdict/data/steps-judged.tsv', import.meta.url)
  return readRows(readFileSync(file, 'utf8'))
    .slice(1)
    .map((row) => {
      const [word = '', step = '', firstLook = ''] = row.split('\t')
      return { word, step, firstLook: firstLook || undefined }
    })
}

/** The words that the program reads at another step now. */
export function findOtherSteps(judged: readonly JudgedStep[], phonics: Phonics): readonly string[] {
  const series = openSequence('series', 'general-american')
  return judged.flatMap(({ word, step }) =>
    (findReadableAt(phonics.read(word), series) ?? 'never') === step ? [] : [word],
  )
}

export function measureJudgedSteps({ phonics }: Engine): readonly Row[] {
  const judged = readJudgedSteps()
  const other = findOtherSteps(judged, phonics['general-american'])
  const first = judged.filter(({ firstLook }) => firstLook === undefined).length
  const toShare = (count: number): string => toPercent(count / judged.length)
  return [
    {
      what: 'much used words first readable in the series at the step judged by hand',
      published: `${judged.length}`,
      ours: `${toShare(judged.length - other.length)}; at the first look ${toShare(first)}`,
      source: "drawn by seed, the project's own judgement",
      ...(other.length > 0 ? { note: `otherwise: ${other.join(' ')}` } : {}),
    },
  ]
}
