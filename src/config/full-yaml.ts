// Reads any YAML with the `yaml` package. Loaded only when the plain reader gives up, as it costs start-up time.

import type { Document, Node } from 'yaml'
import { isAlias, isMap, isScalar, isSeq, parseDocument } from 'yaml'
import type { Range } from '../story/types.ts'
import { findYamlProblems, type ToProblemAt, toTooDeep } from '../yaml/yaml-problems.ts'
import type { Entry, ParsedYaml, Scalar, Tree } from './tree.ts'

// Enough for any honest file, too few to blow one up.
const MAX_ALIASES = 100

export function parseFullYaml(text: string, toProblemAt: ToProblemAt): ParsedYaml {
  try {
    const document = parseDocument(text, { prettyErrors: false, logLevel: 'silent' })
    const fatal = document.errors.filter(({ code }) => code !== 'DUPLICATE_KEY')
    if (fatal.length > 0 || document.contents === null) {
      return { tree: undefined, problems: findYamlProblems(fatal, text, toProblemAt) }
    }
    const tree = toTree(document.contents, document, { left: MAX_ALIASES })
    const isNothing = tree.kind === 'scalar' && tree.value === null
    // A config with a key twice is used all the same.
    const twins = findYamlProblems(document.errors, text, toProblemAt)
    return {
      tree: isNothing ? undefined : tree,
      problems: twins.map((problem) => ({ ...problem, message: `${problem.message}: the first one counts` })),
    }
  } catch (error) {
    // The parser recurses: a file nested some thousand deep ends here.
    if (error instanceof RangeError) return { tree: undefined, problems: [toTooDeep(text, toProblemAt)] }
    const found = { code: 'broken-yaml', message: 'this YAML cannot be read' } as const
    return { tree: undefined, problems: [toProblemAt({ start: 0, end: Math.min(1, text.length) }, found)] }
  }
}

function toTree(node: Node, document: Document, aliases: { left: number }): Tree {
  const at = toRange(node)
  if (isAlias(node)) {
    const target = aliases.left-- > 0 ? node.resolve(document) : undefined
    return target ? { ...toTree(target, document, aliases), ...at } : { ...at, kind: 'scalar', value: null }
  }
  if (isMap<Node, Node | null>(node)) {
    const entries = node.items.map((pair): Entry => {
      const keyAt = toRange(pair.key)
      const key = isScalar(pair.key) ? String(pair.key.value ?? '') : String(pair.key)
      const nothing = { kind: 'scalar', value: null, start: keyAt.end, end: keyAt.end } as const
      return { key, keyAt, value: pair.value ? toTree(pair.value, document, aliases) : nothing }
    })
    return { ...at, kind: 'map', entries }
  }
  if (isSeq<Node>(node)) {
    return { ...at, kind: 'list', items: node.items.map((item) => toTree(item, document, aliases)) }
  }
  return { ...at, kind: 'scalar', value: isScalar(node) ? toScalar(node.value) : null }
}

function toScalar(value: unknown): Scalar {
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value
  return value === null || value === undefined ? null : String(value)
}

function toRange(node: Node): Range {
  return { start: node.range?.[0] ?? 0, end: node.range?.[1] ?? 0 }
}
