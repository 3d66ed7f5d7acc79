// Reads YAML into plain values and remembers where each stands, so that a problem can be shown at its place.

import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { type Found, type Problem, type Range, toPlace, toProblem } from '../problem/index.ts'
import type { Path } from '../yaml/schema-at.ts'
import { findYamlProblems } from '../yaml/yaml-problems.ts'

export type { Path } from '../yaml/schema-at.ts'

export interface Source {
  /** Maps, lists and scalars as plain values; the items of a list are always the words as written (`no`, `1`, `true`). */
  readonly value: unknown
  /** Mistakes in the YAML itself. */
  readonly problems: readonly Problem[]
  /** A problem at the value of a path, or at its key; at the nearest part that exists where it does not. */
  problemAt(path: Path, found: Found, options?: { atKey?: boolean }): Problem
  /** The line of the value of a path, or of the nearest part that exists. */
  lineOf(path: Path): number
}

/** @param path of the file, as shown to people; without one, its problems have places and no file */
export function toSource(text: string, path?: string): Source {
  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false })
  const toPoint = (offset: number) => {
    const { line, col } = lines.linePos(offset)
    return { line, column: col }
  }
  const toProblemAt = (at: Range, found: Found): Problem =>
    toProblem({ ...found, ...(path !== undefined && { path }), place: toPlace(at, { toPoint }) })
  return {
    value: document.contents === null ? null : toPlain(document.contents),
    problems: findYamlProblems([...document.errors, ...document.warnings], text, (at, found) =>
      toProblemAt(at, { ...found, message: `This is not YAML that can be read: ${found.message}` }),
    ),
    problemAt: (at, found, { atKey = false } = {}) => toProblemAt(findRange(document.contents, at, atKey), found),
    lineOf: (at) => toPoint(findRange(document.contents, at, false).start).line,
  }
}

function toPlain(node: unknown, isInList = false): unknown {
  if (isMap(node)) {
    return Object.fromEntries(node.items.map(({ key, value }) => [toName(key), toPlain(value)]))
  }
  if (isSeq(node)) return node.items.map((item) => toPlain(item, true))
  if (!isScalar(node)) return null
  return isInList ? (node.source ?? null) : node.value
}

function findRange(root: Node | null, path: Path, atKey: boolean): Range {
  let node: unknown = root
  let range = rangeOf(root)
  for (const [depth, step] of path.entries()) {
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => toName(key) === step)
      if (pair === undefined) return range
      range = rangeOf(pair.key)
      if (pair.value === null || (atKey && depth === path.length - 1)) return range
      node = pair.value
    } else if (isSeq(node)) node = node.items[Number(step)]
    else return range
    range = rangeOf(node) ?? range
  }
  return range
}

function rangeOf(node: unknown): Range {
  const range = (node as { range?: readonly [number, number, number] | null } | null | undefined)?.range
  return range === null || range === undefined ? { start: 0, end: 0 } : { start: range[0], end: range[1] }
}

function toName(key: unknown): string {
  return isScalar(key) ? String(key.value) : String(key)
}
