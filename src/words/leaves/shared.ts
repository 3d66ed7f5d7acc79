// What several of these ask: a `not` near by, a word of degree, a helping word of several.

import { DEGREES, type Surroundings } from '../surroundings.ts'

export const isNegated = ({ before }: Surroundings): boolean =>
  before.slice(-4).some((word) => /n't$|^(?:cannot|never|no|nor|not|without)$/.test(word))

/** `very quietly`, `more quietly`. */
export const isMeasured = (prev: string): boolean => DEGREES.has(prev) || /^(?:less|more|most)$/.test(prev)

export const HELPS = /^(?:are|can|could|had|have|may|might|must|shall|should|were|will|would)$/
