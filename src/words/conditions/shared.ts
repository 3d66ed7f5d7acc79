// What several conditions ask: a stretch of time, one who does something.

import type { FactsOf } from '../surroundings.ts'

export const TIMES = /^(?:afternoon|day|evening|moment|month|morning|night|time|week|year)s?$/

export const isOneDoer = (prev: string | undefined, factsOf: FactsOf): boolean => {
  if (prev === undefined || /^(?:he|it|she)$/.test(prev)) return prev !== undefined
  const facts = factsOf(prev)
  return facts?.main === 'noun' && facts.inflection === 'none'
}
