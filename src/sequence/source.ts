// Reads YAML into plain values and remembers where each stands, so that a problem can be shown at its place.

import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { findYamlProblems } from '../yaml/yaml-problems.ts'

/** A mistake in a file, at its place. Lines and columns from 1; the end is exclusive. */
export interface SequenceProblem {
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  /** What is wrong, in a teacher's words. */
  readonly message: string
  /** The nearest valid form. */
  readonly suggestion?: string
}

export type Path = readonly (string | number)[]

export interface Source {
  /** Maps, lists and scalars as plain values; the items of a list are always the words as written (`no`, `1`, `true`). */
  readonly value: unknown
  /** Mistakes in the YAML itself. */
  readonly problems: readonly SequenceProblem[]
  /** A problem at the value of a path, or at its key; at the nearest part that exists where it does not. */
  problemAt(
    path: Path,
    message: string,
    options?: { atKey?: boolean; suggestion?: string | undefined },
  ): SequenceProblem
}

export function toSource(text: string): Source {
  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false })
  const toProblem = (from: number, to: number, message: string, suggestion?: string): SequenceProblem => {
    const start = lines.linePos(from)
    const end = lines.linePos(Math.max(from, to))
    const place = { line: start.line, column: start.col, endLine: end.line, endColumn: end.col, message }
    return suggestion === undefined ? place : { ...place, suggestion }
  }
  return {
    value: document.contents === null ? null : toPlain(document.contents),
    problems: findYamlProblems([...document.errors, ...document.warnings], text).map(({ start, end, message }) =>
      toProblem(start, end, `This is not YAML that can be read: ${message}`),
    ),
    problemAt: (path, message, { atKey = false, suggestion } = {}) => {
      const [from, to] = findRange(document.contents, path, atKey)
      return toProblem(from, to, message, suggestion)
    },
  }
}

function toPlain(node: unknown, isInList = false): unknown {
  if (isMap(node)) {
    return Object.fromEntries(node.items.map(({ key, value }) => [toName(key), toPlain(value)]))
  }
  if (isSeq(node)) return node.items.map((item) => toPlain(item, true))
  if (!isScalar(node)) return null
  if (isInList) return typeof node.value === 'string' ? node.value : (node.source ?? String(node.value))
  return node.value
}

function findRange(root: Node | null, path: Path, atKey: boolean): readonly [number, number] {
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

function rangeOf(node: unknown): readonly [number, number] {
  const range = (node as { range?: readonly [number, number, number] | null } | null | undefined)?.range
  return range === null || range === undefined ? [0, 0] : [range[0], range[1]]
}

function toName(key: unknown): string {
  return isScalar(key) ? String(key.value) : String(key)
}
