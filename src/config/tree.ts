// Parsed YAML as plain data that remembers where each value stands.

import type { Problem, Range } from '../problem/index.ts'

export type Scalar = string | number | boolean | null

export type Tree =
  | (Range & { readonly kind: 'map'; readonly entries: readonly Entry[] })
  | (Range & { readonly kind: 'list'; readonly items: readonly Tree[] })
  | (Range & { readonly kind: 'scalar'; readonly value: Scalar })

export interface Entry {
  readonly key: string
  readonly keyAt: Range
  readonly value: Tree
}

/** Ranges are offsets in the parsed text; problems have the places that the caller gives them. The tree is undefined for an empty text, and for one too broken to use. */
export interface ParsedYaml {
  readonly tree: Tree | undefined
  readonly problems: readonly Problem[]
}

export function toPlain(tree: Tree): unknown {
  if (tree.kind === 'scalar') return tree.value
  if (tree.kind === 'list') return tree.items.map(toPlain)
  return Object.fromEntries(tree.entries.map((entry) => [entry.key, toPlain(entry.value)]))
}

/** The value at a path of keys and indexes, or the nearest one on the way to it. */
export function findNearestNode(tree: Tree, path: readonly unknown[]): Tree {
  let node = tree
  for (const step of path) {
    const next =
      node.kind === 'list'
        ? node.items[Number(step)]
        : node.kind === 'map'
          ? node.entries.find((entry) => entry.key === step)?.value
          : undefined
    if (!next) return node
    node = next
  }
  return node
}
