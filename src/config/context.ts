// What the readers of keys, values and rules share: the source, its path, and where problems go.

import type { Rule } from '../lint/types.ts'
import { type Found, type Place, type Problem, type Sourced, toPlace, toProblem } from '../problem/index.ts'
import type { Lines } from '../story/lines.ts'
import type { Range } from '../story/types.ts'
import type { ToProblemAt } from '../yaml/yaml-problems.ts'
import type { Entry } from './tree.ts'
import type { Source } from './types.ts'

export interface ReadContext {
  readonly source: Source
  readonly lines: Lines
  /** The path to read by, where it is not the one shown. */
  readonly path?: string
  /** Where the YAML starts in the source; places in the tree count from there. */
  readonly offset: number
  readonly rules: readonly Rule[]
  /** `front matter` is shared with other tools: keys that are not ours pass there. */
  readonly place: 'config' | 'front matter'
  readonly problems: Problem[]
}

type Where = Pick<ReadContext, 'source' | 'lines' | 'offset'>

/** Gives what is found in the YAML its place in the source. */
export const createToProblemAt =
  (where: Where): ToProblemAt =>
  (at, found) =>
    toProblem({ ...found, path: where.source.path, place: toSourcePlace(at, where) })

const toSourcePlace = (at: Range, { lines, offset }: Pick<Where, 'lines' | 'offset'>): Place =>
  toPlace({ start: at.start + offset, end: at.end + offset }, lines)

export function report(context: ReadContext, at: Range, found: Found): void {
  context.problems.push(createToProblemAt(context)(at, found))
}

export function toSourced<T>(value: T, range: Range, context: ReadContext): Sourced<T> {
  const at = toSourcePlace(range, context)
  const { line, column } = at.start
  const { path } = context.source
  const origin = context.place === 'config' ? `${path}:${line}:${column}` : `top of the story, line ${line}`
  return { value, origin, path, at }
}

/** The text of a value as written. */
export function toRaw(node: Range, context: ReadContext): string {
  return context.source.text.slice(node.start + context.offset, node.end + context.offset)
}

export function isEmpty({ value }: Entry): boolean {
  return value.kind === 'scalar' && value.value === null
}
