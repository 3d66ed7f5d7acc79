// What a schema allows at a place of a file: its keys and its choices, to offer the nearest.

import type { GenericSchema } from 'valibot'

/** The parts of a schema that are walked through. */
interface Node {
  readonly type?: string
  readonly entries?: Readonly<Record<string, Node>>
  readonly item?: Node
  readonly wrapped?: Node
  readonly options?: readonly unknown[]
}

export type Path = readonly (string | number)[]

/** The keys that a map at this path may have. */
export const findKeysAt = (schema: GenericSchema, path: Path): readonly string[] =>
  Object.keys(findNode(schema, path)?.entries ?? {})

/** The texts that a value at this path is chosen from; none where it is no choice. */
export function findChoicesAt(schema: GenericSchema, path: Path): readonly string[] {
  const node = findNode(schema, path)
  return node?.type === 'picklist' ? (node.options ?? []).filter((one) => typeof one === 'string') : []
}

function findNode(schema: GenericSchema, path: Path): Node | undefined {
  let node = unwrap(schema as Node)
  for (const step of path) node = unwrap(typeof step === 'number' ? node?.item : node?.entries?.[step])
  return node
}

function unwrap(node: Node | undefined): Node | undefined {
  return node?.wrapped === undefined ? node : unwrap(node.wrapped)
}
