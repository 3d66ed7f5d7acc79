// Makes problems, and gives them a path, a place or an origin that their maker did not know.

import type { Origin, Place, Problem, Range, Result } from './types.ts'

/** What a maker says of a problem; an error with nothing near, unless it says otherwise. */
export type Found = Pick<Problem, 'code' | 'message'> & Partial<Problem>

/** Whether it stops what was asked for; a warning does not. */
export const isError = ({ severity }: Problem): boolean => severity === 'error'

export const toProblem = (found: Found): Problem => ({ severity: 'error', expected: [], ...found })

export const succeed = <Value>(value: Value): Result<Value> => ({ ok: true, value })

export const fail = (...found: readonly Found[]): { readonly ok: false; readonly problems: readonly Problem[] } => ({
  ok: false,
  problems: found.map(toProblem),
})

/** What is likeliest meant, as `expected` wants it. */
export const toExpected = (nearest: string | undefined): readonly string[] => (nearest === undefined ? [] : [nearest])

/** Whatever tells lines and columns of a text. */
export interface Points {
  toPoint(offset: number): { readonly line: number; readonly column: number }
}

export function toPlace({ start, end }: Range, points: Points): Place {
  const toPoint = (offset: number) => ({ ...points.toPoint(offset), offset })
  return { start: toPoint(start), end: toPoint(Math.max(start, end)) }
}

/** The offsets of a place. */
export const toRange = ({ start, end }: Place): Range => ({ start: start.offset, end: end.offset })

/**
 * A problem of what a setting names, such as a sequence, with who set it. It keeps its own place in its own file; without
 * one, it stands where the setting does, since that is what can be mended.
 */
export function withOrigin(problem: Problem, { origin, path, at }: Origin): Problem {
  const setBy = { origin, ...(path !== undefined && { path }), ...(at && { at }) }
  if (problem.place || path === undefined || at === undefined) return { ...problem, setBy }
  return { ...problem, path, place: at, setBy }
}

/** In order of place. Problems of a whole file come first. */
export const inOrder = (problems: readonly Problem[]): readonly Problem[] =>
  [...problems].sort((one, other) => (one.place?.start.offset ?? -1) - (other.place?.start.offset ?? -1))

/** The same mistake, told of several stories, has the same key. */
export const toProblemKey = ({ path, place, code, message }: Problem): string =>
  JSON.stringify([path, place?.start.offset, place?.end.offset, code, message])
