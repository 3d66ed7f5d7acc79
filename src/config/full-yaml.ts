// Reads any YAML with the `yaml` package. Loaded only when the plain reader gives up, as it costs start-up time.

import type { Document, Node } from 'yaml'
import { isAlias, isMap, isScalar, isSeq, parseDocument } from 'yaml'
import type { Range } from '../story/types.ts'
import type { Entry, ParsedYaml, Scalar, Tree, YamlProblem } from './tree.ts'

// Enough for any honest file, too few to blow one up.
const MAX_ALIASES = 100

const TOO_DEEP = 'this is nested too deep to read'

const CLEAR_MESSAGES: Readonly<Record<string, string>> = {
  DUPLICATE_KEY: 'this key is given twice: the first one counts',
  TAB_AS_INDENT: 'this line is indented with a tab: use spaces',
  BAD_INDENT: 'the indent of this line does not fit the lines above it',
  MISSING_CHAR: 'a closing quote, bracket or comma is missing',
  MULTIPLE_DOCS: 'a second `---` starts a new document: keep one',
  BLOCK_AS_IMPLICIT_KEY: 'a colon too many on this line: put the text in quotes',
  MULTILINE_IMPLICIT_KEY: 'a colon is missing after the key, or a quote or bracket is not closed',
  BAD_SCALAR_START: 'a text cannot start with this mark: put it in quotes',
}

export function parseFullYaml(text: string): ParsedYaml {
  try {
    const document = parseDocument(text, { prettyErrors: false, logLevel: 'silent' })
    const problems = document.errors.map((error) => toProblem(error, text))
    const isUsable = document.errors.every((error) => error.code === 'DUPLICATE_KEY')
    if (!isUsable || document.contents === null) return { tree: undefined, problems: problems.slice(0, 1) }
    const tree = toTree(document.contents, document, { left: MAX_ALIASES })
    return { tree: tree.kind === 'scalar' && tree.value === null ? undefined : tree, problems }
  } catch (error) {
    // The parser recurses: a file nested some thousand deep ends here.
    const message = error instanceof RangeError ? TOO_DEEP : 'this YAML cannot be read'
    return { tree: undefined, problems: [{ start: 0, end: Math.min(1, text.length), message }] }
  }
}

function toProblem(error: { code: string; message: string; pos: [number, number] }, text: string): YamlProblem {
  const plain = error.message.split('\n')[0] ?? ''
  // The parser catches its own overflow and tells it as an error of the text.
  if (plain.includes('call stack')) return { start: 0, end: Math.min(1, text.length), message: TOO_DEEP }
  const message = CLEAR_MESSAGES[error.code] ?? `not valid YAML: ${plain.charAt(0).toLowerCase()}${plain.slice(1)}`
  const start = Math.min(error.pos[0], text.length)
  return { start, end: Math.min(Math.max(error.pos[1], start), text.length), message }
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
