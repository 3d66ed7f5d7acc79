// Adds an item to a list in a YAML file as one small insertion: every other byte stays, comments among them.

import { isMap, isNode, isScalar, isSeq, type Node, type Pair, parseDocument, type YAMLMap, type YAMLSeq } from 'yaml'

/** Put `text` in at this offset of the file. */
export interface Insertion {
  readonly at: number
  readonly text: string
}

export type YamlPath = readonly (string | number)[]

/**
 * @param lines the item as YAML, one line or several (the first without its dash)
 * @param path of the list; its last key is made where it is missing, and so is the list
 * @returns undefined where the file is not built so that a person would add to it there
 */
export function appendToList(yaml: string, path: YamlPath, lines: readonly string[]): Insertion | undefined {
  const document = parseDocument(yaml)
  if (document.errors.length > 0) return undefined
  const newline = yaml.includes('\r\n') ? '\r\n' : '\n'
  const list = document.getIn(path, true)
  if (isSeq(list) && list.items.length > 0)
    return list.flow ? appendToFlow(list, lines) : appendToBlock(yaml, list, lines, newline)
  const key = path.at(-1)
  const holder = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true)
  if (typeof key !== 'string') return undefined
  if (holder === null || holder === undefined)
    return path.length === 1 ? startFile(yaml, key, lines, newline) : undefined
  if (!isMap(holder) || holder.flow) return undefined
  const pair = holder.items.find((item) => isScalar(item.key) && item.key.value === key)
  return pair ? fill(yaml, holder, pair, lines, newline) : addKey(yaml, holder, key, lines, newline)
}

function appendToFlow(list: YAMLSeq, lines: readonly string[]): Insertion | undefined {
  const last = list.items.at(-1)
  if (lines.length > 1 || !isNode(last) || !last.range) return undefined
  return { at: last.range[1], text: `, ${lines[0] ?? ''}` }
}

function appendToBlock(yaml: string, list: YAMLSeq, lines: readonly string[], newline: string): Insertion | undefined {
  const start = list.range?.[0]
  const end = findEnd(yaml, list)
  if (start === undefined || end === undefined) return undefined
  return { at: end, text: toItem(lines, toColumn(yaml, start), newline) }
}

/** A key whose list is empty: `teach:` or `teach: []`. */
function fill(
  yaml: string,
  holder: YAMLMap,
  pair: Pair,
  lines: readonly string[],
  newline: string,
): Insertion | undefined {
  const { value } = pair
  if (isSeq(value) && value.flow && value.range) {
    return lines.length > 1 ? undefined : { at: value.range[0] + 1, text: lines[0] ?? '' }
  }
  if (isNode(value) && !(isScalar(value) && value.value === null)) return undefined
  const key = pair.key as Node
  if (!key.range) return undefined
  const at = toLineEnd(yaml, key.range[1])
  return { at, text: toItem(lines, toColumn(yaml, holder.range?.[0] ?? 0) + 2, newline) }
}

function addKey(
  yaml: string,
  holder: YAMLMap,
  key: string,
  lines: readonly string[],
  newline: string,
): Insertion | undefined {
  const end = findEnd(yaml, holder)
  const start = holder.range?.[0]
  if (end === undefined || start === undefined) return undefined
  const column = toColumn(yaml, start)
  return { at: end, text: `${newline}${' '.repeat(column)}${key}:${toItem(lines, column + 2, newline)}` }
}

/** A file with nothing in it but comments. */
function startFile(yaml: string, key: string, lines: readonly string[], newline: string): Insertion {
  const open = yaml === '' || /[\r\n]$/.test(yaml) ? '' : newline
  return { at: yaml.length, text: `${open}${key}:${toItem(lines, 2, newline)}${newline}` }
}

function toItem(lines: readonly string[], column: number, newline: string): string {
  const indent = ' '.repeat(column)
  return lines.map((line, at) => `${newline}${indent}${at === 0 ? '- ' : '  '}${line}`).join('')
}

/** The column of an offset, from 0: how far its line's first item is set in. */
const toColumn = (yaml: string, offset: number): number => offset - (yaml.lastIndexOf('\n', offset - 1) + 1)

/** Behind the last value and the comment on its line. */
function findEnd(yaml: string, node: Node): number | undefined {
  const last = findLast(node)
  const end = last?.range?.[1]
  if (end === undefined) return undefined
  // A text over several lines ends behind its newline.
  return yaml[end - 1] === '\n' && end > (last?.range?.[0] ?? 0) ? trimNewline(yaml, end) : toLineEnd(yaml, end)
}

function findLast(node: Node): Node | undefined {
  if (isSeq(node) && !node.flow && node.items.length > 0) {
    const last = node.items.at(-1)
    return isNode(last) ? findLast(last) : node
  }
  if (isMap(node) && !node.flow && node.items.length > 0) {
    const { key, value } = node.items.at(-1) as Pair
    if (isNode(value) && !(isScalar(value) && value.value === null)) return findLast(value)
    return isNode(key) ? key : node
  }
  return node
}

const trimNewline = (yaml: string, end: number): number => (yaml[end - 2] === '\r' ? end - 2 : end - 1)

function toLineEnd(yaml: string, from: number): number {
  const rest = /^[^\r\n]*/.exec(yaml.slice(from))?.[0].length ?? 0
  return from + rest
}

export const applyInsertion = (text: string, { at, text: added }: Insertion): string =>
  text.slice(0, at) + added + text.slice(at)
