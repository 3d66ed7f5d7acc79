// The row of the table about entries of the dictionary that a machine doubted: how many were judged, and how?

import { readFileSync } from 'node:fs'
import type { Engine } from './engine.ts'
import { findFamilyDoubts } from './family-doubts.ts'
import { readRows } from './read-rows.ts'
import type { Row } from './rows.ts'

/** An entry that was doubted, with what a person said of it. */
export interface JudgedDoubt {
  readonly word: string
  readonly by: string
  readonly isRight: boolean
  readonly reason: string
}

export function readJudgedDoubts(): readonly JudgedDoubt[] {
  const lines = readRows(readFileSync(new URL('data/dictionary-doubts.tsv', import.meta.url), 'utf8'))
  return lines.slice(1).map((line) => {
    const [word = '', by = '', verdict = '', reason = ''] = line.split('\t')
    return { word, by, isRight: verdict === 'right', reason }
  })
}

/** Words that are doubted today by their family and that nobody has judged. */
function findUnjudged(engine: Engine, all: readonly JudgedDoubt[]): readonly string[] {
  const judged = new Set(all.map(({ word }) => word))
  return findFamilyDoubts(engine).flatMap(({ word }) => (judged.has(word) ? [] : [word]))
}

export function measureJudgedDoubts(engine: Engine): readonly Row[] {
  const all = readJudgedDoubts()
  const unjudged = findUnjudged(engine, all)
  return ['guesser and voice', 'family'].map((by): Row => {
    const judged = all.filter((one) => one.by === by)
    const right = judged.filter(({ isRight }) => isRight).length
    const left = by === 'family' ? unjudged : []
    return {
      what: `entries of the dictionary doubted by ${by}, judged one by one`,
      published: `${judged.length + left.length}`,
      ours: `${judged.length - right} corrected; ${right} right as they stand`,
      source: "the project's own judgement",
      ...(left.length > 0 ? { note: `not judged: ${left.slice(0, 5).join(' ')}` } : {}),
    }
  })
}
