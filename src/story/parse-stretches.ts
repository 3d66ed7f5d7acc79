// Parses a long paragraph stretch by stretch and joins what comes out to the tree of the whole.

import type { Nodes, Parent, Root, Text } from 'mdast'
import type { Node, Point, Position } from 'unist'
import type { Gap } from './inline-cuts.ts'

/** Undefined where the stretches do not fit together, which only a mistake in how they were cut could bring about. */
export function parseStretches(
  source: string,
  { start, end, cuts }: { readonly start: number; readonly end: number; readonly cuts: readonly Gap[] },
  parse: (text: string) => Root,
): Root | undefined {
  const ends = [...cuts.map((cut) => cut.start), end]
  const root = parse(source.slice(start, ends[0]))
  for (const [at, cut] of cuts.entries()) {
    const next = parse(source.slice(cut.next, ends[at + 1]))
    const last = findTail(root)
    const tail = last?.children.at(-1)
    if (!last || tail?.type !== 'text') return undefined
    const from = toPlace(placeOf(tail).end, source, cut)
    for (const node of next.children) move(node, from)
    if (!join(last, tail, next, source.slice(cut.start, cut.end), root)) return undefined
  }
  return root
}

/** The paragraph at the very end. */
function findTail(root: Root): Parent | undefined {
  let node: Nodes | undefined = root.children.at(-1)
  while (node && node.type !== 'paragraph') node = 'children' in node ? node.children.at(-1) : undefined
  return node
}

function join(last: Parent, tail: Text, next: Root, between: string, root: Root): boolean {
  const [first, ...others] = next.children
  if (first?.type !== 'paragraph' && first?.type !== 'heading') return false
  const [head, ...rest] = first.children
  const isInRoot = root.children.at(-1) === last
  const endsAll = first.type === 'paragraph' && others.length === 0
  if (head?.type !== 'text' || !(isInRoot || endsAll)) return false
  tail.value += between + head.value
  placeOf(tail).end = placeOf(head).end
  for (const one of rest) last.children.push(one)
  if (first.type === 'heading') Object.assign(last, { type: 'heading', depth: first.depth })
  endAt(root, last, placeOf(first).end)
  for (const one of others) root.children.push(one)
  return true
}

/** All that ends with the paragraph ends further on. */
function endAt(root: Root, last: Parent, end: Point): void {
  for (let node: Nodes | undefined = root.children.at(-1); node; ) {
    placeOf(node).end = { ...end }
    node = node === last || !('children' in node) ? undefined : node.children.at(-1)
  }
}

/** Where the next stretch begins in the whole, counted from where the text before it ends. */
function toPlace({ line, column, offset = 0 }: Point, source: string, { start, end, next }: Gap): Point {
  const isLineEnd = source[end - 1] === '\n'
  return {
    line: isLineEnd ? line + 1 : line,
    column: isLineEnd ? next - end + 1 : column + next - start,
    offset: offset + next - start,
  }
}

function move(node: Nodes, by: Point): void {
  const { start, end } = placeOf(node)
  movePoint(start, by)
  movePoint(end, by)
  if ('children' in node) for (const child of node.children) move(child, by)
}

function movePoint(point: Point, { line, column, offset = 0 }: Point): void {
  if (point.line === 1) point.column += column - 1
  point.line += line - 1
  point.offset = (point.offset ?? 0) + offset
}

/** The parser gives one to every node. */
const placeOf = (node: Node): Position => node.position as Position
