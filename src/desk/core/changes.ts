// Changes as the page takes them: the smallest edits, in order, none over another.

import { toDifference } from '../difference.ts'
import type { Changed, DeskEdit } from './questions/shared.ts'

/** Undefined where two of them overlap. */
export function toChanged(path: string, before: string, edits: readonly DeskEdit[]): Changed | undefined {
  const sorted = [...edits].sort((one, other) => one.start - other.start || one.end - other.end)
  const isApart = sorted.every(({ start }, at) => start >= (sorted[at - 1]?.end ?? 0))
  return isApart ? { path, before, edits: sorted.map(({ start, end, text }) => ({ start, end, text })) } : undefined
}

/** The one stretch in which two texts differ; no edit where they do not. */
export const toChange = (path: string, before: string, after: string): Changed => ({
  ...{ path, before },
  edits: toDifference(before, after),
})
