// How far apart two words are in letters, or in sounds: the least number of parts to add, drop or change, as a share of
// the longer word.

import { countEdits } from '../edits.ts'

/** 0 for the same, 1 where nothing agrees. Parts are letters or sounds. */
export function toDistance(a: ArrayLike<string>, b: ArrayLike<string>): number {
  const longer = Math.max(a.length, b.length)
  return longer === 0 ? 0 : countEdits(a, b) / longer
}

/** The least that the distance can be, by the lengths alone. */
export const toLeastDistance = (a: ArrayLike<unknown>, b: ArrayLike<unknown>): number =>
  Math.abs(a.length - b.length) / Math.max(1, a.length, b.length)
