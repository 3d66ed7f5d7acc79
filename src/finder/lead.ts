// A list of the most useful words that leads with what a step and the last ones bring: what a maker can use now.

import { type FoundWords, findWords, type WordQuery } from './find.ts'
import type { Pool } from './pool.ts'

/** Of the words that are asked for, so many may be new at the step, and so many new at the steps just before. */
const SHARE_NEW = 1 / 2
const SHARE_RECENT = 1 / 4
const RECENT_STEPS = 2

/** Only what small children know leads; a list that is asked for in another order, or for new words alone, is as it was. */
export function findLeading(pool: Pool, query: WordQuery): FoundWords {
  const { count = Infinity, order = 'useful', newAtStep } = query
  const all = findWords(pool, query)
  const isWhole = pool.stepIndex === 0 || order !== 'useful' || newAtStep === true || (!all.more && count < Infinity)
  if (isWhole) return all
  const findNew = (newFrom: number, share: number) =>
    findWords(pool, { ...query, known: true, newFrom, count: Math.ceil(count * share) }).words
  const fresh = findNew(pool.stepIndex, SHARE_NEW)
  const isFresh = new Set(fresh.map(({ word }) => word))
  const recent = findNew(pool.stepIndex - RECENT_STEPS, SHARE_NEW + SHARE_RECENT).filter(
    ({ word }) => !isFresh.has(word),
  )
  const lead = [...fresh, ...recent.slice(0, Math.ceil(count * SHARE_RECENT))]
  const found = new Map([...lead, ...all.words].map((one) => [one.word, one]))
  return { words: [...found.values()].slice(0, count), more: all.more }
}
