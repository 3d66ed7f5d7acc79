// Settings at the top of a story, changed one by one: each as one small edit, every other byte kept, comments among them.

import { type Edit, insert, toNewline } from './edit.ts'
import { addLine, findEntry, type Head, isText, readEntries, startHead } from './head.ts'

/** Gives a key a value, in place of the one that it has. Undefined where a person has to do it. */
export async function setValue(head: Head, key: string, text: string): Promise<Edit | undefined> {
  const { source, frontMatter } = head
  const value = toScalar(text)
  if (!frontMatter) return startHead(source, `${key}: ${value}`)
  const entries = await readEntries(frontMatter)
  if (entries === undefined) return undefined
  const entry = findEntry(entries, key)
  if (entry === undefined) return addLine(frontMatter, `${key}: ${value}`, toNewline(source))
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

/** Quoted where YAML would take it for something else than a text; a number stays one. */
function toScalar(text: string): string {
  const isPlain = /^[\p{L}./][\p{L}\d’'!?./ _-]*$/u.test(text) && isText(text)
  return (isPlain && !text.endsWith(' ') && !/^\.+\s|^-/.test(text)) ||
    /^-?(?:0|[1-9]\d{0,8})(?:\.\d{1,6})?$/.test(text)
    ? text
    : JSON.stringify(text)
}
