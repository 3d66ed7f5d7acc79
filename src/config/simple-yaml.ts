// Reads the plainest YAML by itself, so that a story with four lines of front matter does not pay for a whole parser.

import type { Range } from '../story/types.ts'
import type { Entry, Scalar, Tree } from './tree.ts'

// Only what YAML reads in one way: a letter first, then letters, digits and harmless marks. No `:` and no `#`.
const LETTER = 'A-Za-z\\u00C0-\\u024F'
const MARKS = "_.!?()+&/;'’“”–…-"
const QUOTED = `"[^"\\\\\\t\\n\\r]*"|'[^'\\t\\n\\r]*'`
const NUMBER = '(?:0|[1-9]\\d{0,8})(?:\\.\\d{1,6})?(?![^,\\]\\s])'
const DATE_OR_SHARE = '\\d{4}-\\d\\d-\\d\\d|\\d{1,3}%'
const toValue = (marks: string) =>
  `${QUOTED}|${DATE_OR_SHARE}|${NUMBER}|[${LETTER}](?:[${LETTER}\\d ${marks}]*[${LETTER}\\d${marks}])?`
const INLINE_ITEM = toValue(MARKS)
const VALUE = toValue(`,${MARKS}`)

const BLANK = /^ *(?:#.*)?$/
const KEY_LINE = new RegExp(`^([A-Za-z](?:[A-Za-z _-]*[A-Za-z])?):(?: +(?:(${VALUE})|(\\[.*\\])))? *$`)
const ITEM_LINE = new RegExp(`^( *)- +(${VALUE}) *$`)
const INLINE_LIST = new RegExp(`^\\[ *(?:(?:${INLINE_ITEM})(?: *, *(?:${INLINE_ITEM}))*)? *\\]$`)
const ANY_INLINE_ITEM = new RegExp(INLINE_ITEM, 'g')
// Words that YAML may take for something else than text.
const SPECIAL = /^(?:true|false|null)$/i

/**
 * The tree of flat `key: value`, `key: [a, b]` and `key:` with `- a` lines below, exactly as a YAML 1.2 parser gives it.
 * Undefined for anything else, broken YAML among it: ask the full parser then.
 */
export function parseSimpleYaml(text: string): Tree | undefined {
  const entries: Entry[] = []
  let list: OpenList | undefined
  let start = 0
  for (const lineWithReturn of text.split('\n')) {
    const line = lineWithReturn.endsWith('\r') ? lineWithReturn.slice(0, -1) : lineWithReturn
    if (line.length > 1000) return undefined
    if (!BLANK.test(line)) {
      const isItem = list !== undefined && addItem(list, line, start)
      if (!isItem) {
        if (list && !closeList(list, entries)) return undefined
        const found = readKeyLine(line, start)
        if (!found || entries.some((entry) => entry.key === found.key)) return undefined
        list = found.value ? undefined : { key: found.key, keyAt: found.keyAt, indent: -1, items: [] }
        if (found.value) entries.push({ key: found.key, keyAt: found.keyAt, value: found.value })
      }
    }
    start += lineWithReturn.length + 1
  }
  if (list && !closeList(list, entries)) return undefined
  const first = entries[0]
  const last = entries.at(-1)
  if (!first || !last) return undefined
  return { kind: 'map', entries, start: first.keyAt.start, end: last.value.end }
}

interface OpenList {
  readonly key: string
  readonly keyAt: Range
  indent: number
  readonly items: Tree[]
}

function addItem(list: OpenList, line: string, lineStart: number): boolean {
  const match = ITEM_LINE.exec(line)
  if (!match) return false
  const indent = match[1]?.length ?? 0
  if (list.indent >= 0 && indent !== list.indent) return false
  const raw = match[2] ?? ''
  const item = toScalar(raw, lineStart + line.indexOf(raw, indent + 1))
  if (!item) return false
  list.indent = indent
  list.items.push(item)
  return true
}

function closeList({ key, keyAt, items }: OpenList, entries: Entry[]): boolean {
  const first = items[0]
  const last = items.at(-1)
  if (!first || !last || entries.some((entry) => entry.key === key)) return false
  entries.push({ key, keyAt, value: { kind: 'list', items, start: first.start, end: last.end } })
  return true
}

function readKeyLine(line: string, start: number) {
  const match = KEY_LINE.exec(line)
  const key = match?.[1]
  if (!match || !key || SPECIAL.test(key)) return undefined
  const keyAt = { start, end: start + key.length }
  const raw = match[2] ?? match[3]
  if (raw === undefined) return { key, keyAt, value: undefined }
  const valueStart = start + line.indexOf(raw, key.length + 1)
  const value = match[3] === undefined ? toScalar(raw, valueStart) : toInlineList(raw, valueStart)
  return value ? { key, keyAt, value } : undefined
}

function toInlineList(raw: string, start: number): Tree | undefined {
  if (!INLINE_LIST.test(raw)) return undefined
  const items: Tree[] = []
  for (const match of raw.matchAll(ANY_INLINE_ITEM)) {
    const item = toScalar(match[0].trimEnd(), start + match.index)
    if (!item) return undefined
    items.push(item)
  }
  return { kind: 'list', items, start, end: start + raw.length }
}

function toScalar(raw: string, start: number): Tree | undefined {
  const at = { kind: 'scalar', start, end: start + raw.length } as const
  if (SPECIAL.test(raw)) return raw === 'true' || raw === 'false' ? { ...at, value: raw === 'true' } : undefined
  return { ...at, value: toScalarValue(raw) }
}

function toScalarValue(raw: string): Scalar {
  if (raw.startsWith('"') || raw.startsWith("'")) return raw.slice(1, -1)
  return /^[\d.]+$/.test(raw) ? Number(raw) : raw
}
