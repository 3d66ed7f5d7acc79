// What the readers of keys, values and rules share: the source, its path, and where problems go.

import type { Rule } from '../lint/types.ts'
import type { Lines } from '../story/lines.ts'
import type { Range } from '../story/types.ts'
import { toProblem } from './place.ts'
import type { Entry, Tree } from './tree.ts'
import type { Problem, Source, Sourced } from './types.ts'

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

export function toSourceRange(at: Range, { offset }: ReadContext): Range {
  return { start: at.start + offset, end: at.end + offset }
}

export function report(
  context: ReadContext,
  at: Range,
  message: string,
  more: { readonly severity?: Problem['severity']; readonly expected?: readonly string[] } = {},
): void {
  context.problems.push(toProblem(context.source, toSourceRange(at, context), message, more, context.lines))
}

export function toSourced<T>(value: T, at: Range, context: ReadContext): Sourced<T> {
  const range = toSourceRange(at, context)
  const { line, column } = context.lines.toPoint(range.start)
  const origin = context.place === 'config' ? `${context.source.path}:${line}:${column}` : `front matter, line ${line}`
  return { value, origin, at: range }
}

/** The text of a value as written. */
export function toRaw(node: Tree, context: ReadContext): string {
  return context.source.text.slice(node.start + context.offset, node.end + context.offset)
}

export function isEmpty({ value }: Entry): boolean {
  return value.kind === 'scalar' && value.value === null
}
