// Changes one value of a YAML file as one small edit: every other byte stays, comments among them.

import { isMap, isNode, isScalar, isSeq, type Node, parseDocument, stringify, type YAMLSeq } from 'yaml'
import type { YamlPath } from './append.ts'

/** Put `text` in the place of what stands between two offsets. */
export interface Replacement {
  readonly start: number
  readonly end: number
  readonly text: string
}

const toScalar = (text: string): string => stringify(text, { lineWidth: 0 }).trim()

/** Undefined where no plain value of one line stands at the path. */
export function replaceScalar(yaml: string, path: YamlPath, text: string): Replacement | undefined {
  const document = parseDocument(yaml)
  const node = document.errors.length > 0 ? undefined : document.getIn(path, true)
  if (!isScalar(node) || !node.range || node.anchor !== undefined) return undefined
  const [start, end] = node.range
  return yaml.slice(start, end).includes('\n') ? undefined : { start, end, text: toScalar(text) }
}

/** Adds `key: value` below another key of the same map. Undefined where the file is not built in lines there. */
export function addKeyBelow(
  yaml: string,
  path: YamlPath,
  below: string,
  key: string,
  text: string,
): Replacement | undefined {
  const document = parseDocument(yaml)
  const map = document.errors.length > 0 ? undefined : document.getIn(path, true)
  if (!isMap(map) || map.flow) return undefined
  const pair = map.items.find((item) => isScalar(item.key) && item.key.value === below)
  const [key_, value] = [pair?.key, pair?.value]
  if (!isScalar(key_) || !isScalar(value) || !key_.range || !value.range) return undefined
  const at = value.range[1] + (/^[^\r\n]*/.exec(yaml.slice(value.range[1]))?.[0].length ?? 0)
  const column = key_.range[0] - (yaml.lastIndexOf('\n', key_.range[0] - 1) + 1)
  const newline = yaml.includes('\r\n') ? '\r\n' : '\n'
  return { start: at, end: at, text: `${newline}${' '.repeat(column)}${key}: ${toScalar(text)}` }
}

/** Takes an item out of a list; its comment on the same line goes with it. The last one leaves `[]`, where the list was. */
export function removeItem(yaml: string, path: YamlPath, at: number): Replacement | undefined {
  const document = parseDocument(yaml)
  const list = document.errors.length > 0 ? undefined : document.getIn(path, true)
  if (!isSeq(list) || !list.range) return undefined
  const item = list.items[at]
  if (!isNode(item) || !item.range) return undefined
  if (list.flow) return removeFromFlow(yaml, list, item, at)
  if (list.items.length === 1) return replaceByNothing(yaml, list)
  const start = yaml.lastIndexOf('\n', item.range[0] - 1) + 1
  if (!/^[ \t]*-[ \t]*$/.test(yaml.slice(start, item.range[0]))) return undefined
  const newline = yaml.indexOf('\n', item.range[1] - (yaml[item.range[1] - 1] === '\n' ? 1 : 0))
  if (newline >= 0) return { start, end: newline + 1, text: '' }
  const before = yaml[start - 2] === '\r' ? start - 2 : start - 1
  return { start: before, end: yaml.length, text: '' }
}

function removeFromFlow(yaml: string, list: YAMLSeq, item: Node, at: number): Replacement | undefined {
  const [before, after] = [list.items[at - 1], list.items[at + 1]].map((node) =>
    isNode(node) ? node.range : undefined,
  )
  if (!item.range) return undefined
  if (after) return { start: item.range[0], end: after[0], text: '' }
  const start = before ? before[1] : item.range[0]
  return yaml.slice(start, item.range[1]).includes('#') ? undefined : { start, end: item.range[1], text: '' }
}

/** From the line of its only item: ` []` behind the key. */
function replaceByNothing(yaml: string, list: YAMLSeq): Replacement | undefined {
  const start = list.range?.[0]
  if (start === undefined) return undefined
  const [only] = list.items
  const end = isNode(only) ? only.range?.[1] : undefined
  const colon = yaml.lastIndexOf(':', start)
  if (end === undefined || colon < 0 || !/^:\s*$/.test(yaml.slice(colon, start))) return undefined
  const lineEnd = end + (/^[^\r\n]*/.exec(yaml.slice(end))?.[0].length ?? 0)
  return { start: colon + 1, end: lineEnd, text: ' []' }
}
