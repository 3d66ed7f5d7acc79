// Settings at the top of a story, changed one by one: each as one small edit, every other byte kept, comments among them.

import { toSettingKey } from '../config/keys.ts'
import { parseYaml } from '../config/parse.ts'
import type { Entry, Tree } from '../config/tree.ts'
import type { FrontMatter, Story } from '../story/types.ts'
import type { Edit } from './edits.ts'

type Head = Pick<Story, 'source' | 'frontMatter'>

/** Whether settings can be changed from outside: not where their YAML is broken, or is written in one line of braces. */
export async function canBeSet({ frontMatter }: Head): Promise<boolean> {
  return frontMatter === undefined || (await readEntries(frontMatter)) !== undefined
}

/** Undefined where they cannot be read as lines of keys. */
async function readEntries({ value }: FrontMatter): Promise<readonly Entry[] | undefined> {
  const { tree, problems } = await parseYaml(value)
  if (problems.length > 0) return undefined
  if (tree === undefined) return []
  return tree.kind === 'map' && value[tree.start] !== '{' ? tree.entries : undefined
}

/** Gives a key a value, in place of the one that it has. Undefined where a person has to do it. */
export async function setValue(head: Head, key: string, text: string): Promise<Edit | undefined> {
  const { source, frontMatter } = head
  const newline = source.includes('\r\n') ? '\r\n' : '\n'
  const value = toScalar(text)
  if (!frontMatter) {
    const top = source.startsWith('\uFEFF') ? 1 : 0
    return insert(top, `---${newline}${key}: ${value}${newline}---${newline}${newline}`)
  }
  const entries = await readEntries(frontMatter)
  if (entries === undefined) return undefined
  const entry = findEntry(entries, key)
  if (entry === undefined) return addLine(frontMatter, `${key}: ${value}`, newline)
  const { value: old, keyAt } = entry
  if (old.kind !== 'scalar') return undefined
  const at = (offset: number): number => frontMatter.valueStart + offset
  if (old.value === null && old.start === old.end)
    return insert(at(frontMatter.value.indexOf(':', keyAt.end) + 1), ` ${value}`)
  // A text over several lines ends where the next key begins, which is not ours to find.
  return /^[|>&*!]/.test(frontMatter.value.slice(old.start))
    ? undefined
    : { start: at(old.start), end: at(old.end), text: value }
}

/** Takes the lines of a key away; no edit where there is none. Undefined where a person has to do it. */
export async function removeKey({ source, frontMatter }: Head, key: string): Promise<Edit | null | undefined> {
  if (!frontMatter) return null
  const entries = await readEntries(frontMatter)
  if (entries === undefined) return undefined
  const entry = findEntry(entries, key)
  if (entry === undefined) return null
  const { value, valueStart } = frontMatter
  const start = value.lastIndexOf('\n', entry.keyAt.start - 1) + 1
  const lineEnd = value.indexOf('\n', Math.max(entry.value.end - 1, entry.keyAt.end))
  // The last line has its end outside, before the closing dashes.
  const end = valueStart + (lineEnd < 0 ? value.length : lineEnd + 1)
  const behind = lineEnd < 0 ? (/^\r?\n/.exec(source.slice(end))?.[0].length ?? 0) : 0
  return { start: valueStart + start, end: end + behind, text: '' }
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

const findEntry = (entries: readonly Entry[], key: string): Entry | undefined =>
  entries.find((one) => toSettingKey(one.key) === key)

function addLine({ value, valueStart }: FrontMatter, line: string, newline: string): Edit {
  const isOpen = value !== '' && !/[\r\n]$/.test(value)
  return insert(valueStart + value.length, `${isOpen ? newline : ''}${line}${isOpen ? '' : newline}`)
}

/** Quoted where YAML would take it for something else than a text; a number stays one. */
function toScalar(text: string): string {
  const isPlain = /^[\p{L}./][\p{L}\d’'!?./ _-]*$/u.test(text) && !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(text)
  return (isPlain && !text.endsWith(' ') && !/^\.+\s|^-/.test(text)) ||
    /^-?(?:0|[1-9]\d{0,8})(?:\.\d{1,6})?$/.test(text)
    ? text
    : JSON.stringify(text)
}

const insert = (at: number, text: string): Edit => ({ start: at, end: at, text })
