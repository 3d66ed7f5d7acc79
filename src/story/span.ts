// The place of a node that holds others: from the first of them to the last.

import type { Node, Position } from 'unist'

/** None where they have none: all have a place, or none has. */
export function toSpan(children: readonly Node[]): { readonly position?: Position } {
  const first = children[0]?.position
  const last = children.at(-1)?.position
  return first && last ? { position: { start: first.start, end: last.end } } : {}
}
