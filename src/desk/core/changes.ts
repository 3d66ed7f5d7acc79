// Changes as the page takes them: the smallest edits, in order, none over another.

import type { Changed, DeskEdit } from './questions/shared.ts'

/** Undefined where two of them overlap. */
export function toChanged(path: string, before: string, edits: readonly DeskEdit[]): Changed | undefined {
  const sorted = [...edits].sort((one, other) => one.start - other.start || one.end - other.end)
  const isApart = sorted.every(({ start }, at) => start >= (sorted[at - 1]?.end ?? 0))
  return isApart ? { path, before, edits: sorted.map(({ start, end, text }) => ({ start, end, text })) } : undefined
}

/** The one stretch in which two texts differ; no edit where they do not. */
export function toChange(path: string, before: string, after: string): Changed {
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before[start] === after[start]) start++
  let same = 0
  while (same < most - start && before[before.length - 1 - same] === after[after.length - 1 - same]) same++
  const text = after.slice(start, after.length - same)
  const end = before.length - same
  return { path, before, edits: start === end && text === '' ? [] : [{ start, end, text }] }
}
