// Words put into a list at the top of a story, and taken out: each as one small edit, every other byte kept.

import type { Tree } from '../config/tree.ts'
import type { FrontMatter } from '../story/types.ts'
import { type Edit, insert, toNewline } from './edit.ts'
import { addLine, findEntry, type Head, isText, readEntries, startHead } from './head.ts'
import { removeKey } from './head-value.ts'

type ListTree = Extract<Tree, { kind: 'list' }>

/** Adds a word to a list of the front matter, which is made where there is none. Undefined where it cannot be read. */
export async function addToList({ source, frontMatter }: Head, key: string, word: string): Promise<Edit | undefined> {
  const newline = toNewline(source)
  const value = toItem(word)
  if (!frontMatter) return startHead(source, `${key}: [${value}]`)
  const entries = await readEntries(frontMatter)
  if (entries === undefined) return undefined
  const entry = findEntry(entries, key)
  if (entry === undefined) return addLine(frontMatter, `${key}: [${value}]`, newline)
  const at = (offset: number): number => frontMatter.valueStart + offset
  if (entry.value.kind === 'list') return addToYamlList(entry.value, frontMatter.value, at, value, newline)
  if (entry.value.kind !== 'scalar') return undefined
  if (entry.value.value === null) return insert(at(frontMatter.value.indexOf(':', entry.keyAt.end) + 1), ` [${value}]`)
  const first = frontMatter.value[entry.value.start] ?? ''
  // A text over several lines: rare enough to leave to a person.
  if (/[|>]/.test(first)) return undefined
  const isQuoted = /["']/.test(first)
  return insert(at(entry.value.end - (isQuoted ? 1 : 0)), `, ${isQuoted ? word : value}`)
}

function addToYamlList(
  list: ListTree,
  yaml: string,
  at: (offset: number) => number,
  value: string,
  newline: string,
): Edit | undefined {
  const last = list.items.at(-1)
  if (yaml[list.start] === '[') return insert(at(last ? last.end : list.start + 1), last ? `, ${value}` : value)
  const first = list.items[0]
  if (!first || !last) return undefined
  const lineStart = yaml.lastIndexOf('\n', first.start) + 1
  const dash = /^[ \t]*- */.exec(yaml.slice(lineStart, first.start))?.[0]
  if (dash === undefined) return undefined
  // A comment behind the last item stays on its line.
  const rest = /^[^\r\n]*/.exec(yaml.slice(last.end))?.[0].length ?? 0
  return insert(at(last.end + rest), `${newline}${dash}${value}`)
}

/** Quoted where YAML would take it for something else than a word. */
function toItem(word: string): string {
  const isPlain = /^\p{L}[\p{L}’' -]*$/u.test(word) && isText(word)
  return isPlain ? word : JSON.stringify(word)
}

/** Takes an item out of a list, and the key with the last one. Undefined where a person has to do it. */
export async function removeFromList(head: Head, key: string, item: string): Promise<Edit | null | undefined> {
  const { frontMatter } = head
  if (!frontMatter) return null
  const entries = await readEntries(frontMatter)
  const list = entries && findEntry(entries, key)?.value
  if (list === undefined) return entries && null
  const items = list.kind === 'list' ? list.items : undefined
  const at = (offset: number): number => frontMatter.valueStart + offset
  if (items === undefined) return removeFromText(head, key, list, item)
  const number = items.findIndex((one) => one.kind === 'scalar' && String(one.value).trim() === item)
  const found = items[number]
  if (found === undefined) return null
  if (items.length === 1) return removeKey(head, key)
  const [before, after] = [items[number - 1], items[number + 1]]
  if (frontMatter.value[list.start] === '[')
    return after
      ? { start: at(found.start), end: at(after.start), text: '' }
      : { start: at(before?.end ?? found.start), end: at(found.end), text: '' }
  return removeLine(frontMatter, found)
}

function removeLine({ value, valueStart }: FrontMatter, { start, end }: Tree): Edit {
  const from = value.lastIndexOf('\n', start - 1) + 1
  const to = value.indexOf('\n', end)
  // Of the last line its beginning goes, since its end stands before the closing dashes.
  if (to < 0)
    return { start: valueStart + from - (value[from - 2] === '\r' ? 2 : 1), end: valueStart + value.length, text: '' }
  return { start: valueStart + from, end: valueStart + to + 1, text: '' }
}

/** One line with commas: `names: Tam, Sid`. */
function removeFromText(
  head: Head,
  key: string,
  list: Tree,
  item: string,
): Promise<Edit | null | undefined> | Edit | null | undefined {
  const { frontMatter } = head
  if (!frontMatter || list.kind !== 'scalar') return undefined
  const written = frontMatter.value.slice(list.start, list.end)
  if (/^["'|>&*!]/.test(written)) return undefined
  const items = [...written.matchAll(/[^,\s](?:[^,]*[^,\s])?/g)]
  const number = items.findIndex(([text]) => text === item)
  const found = items[number]
  if (found === undefined) return null
  if (items.length === 1) return removeKey(head, key)
  const [before, after] = [items[number - 1], items[number + 1]]
  const at = (offset: number): number => frontMatter.valueStart + list.start + offset
  if (after) return { start: at(found.index), end: at(after.index), text: '' }
  return {
    start: at((before?.index ?? 0) + (before?.[0].length ?? 0)),
    end: at(found.index + found[0].length),
    text: '',
  }
}
