// The one stretch in which two texts differ: what both begin and end with stays.

import type { DeskEdit } from './core/questions.ts'

/** No edit where they are the same. */
export function toDifference(before: string, after: string): readonly DeskEdit[] {
  if (before === after) return []
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before[start] === after[start]) start++
  let tail = 0
  while (tail < most - start && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++
  // A letter of two units is put in whole.
  if (start > 0 && /[\uD800-\uDBFF]/.test(before[start - 1] ?? '')) start--
  if (tail > 0 && /[\uDC00-\uDFFF]/.test(before[before.length - tail] ?? '')) tail--
  return [{ start, end: before.length - tail, text: after.slice(start, after.length - tail) }]
}
