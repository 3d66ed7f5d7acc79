// Finds text in a block of HTML: Markdown leaves it alone, and its writer may not know.

import { hasLetterOrDigit } from '../letter-kinds.ts'
import type { Range } from './types.ts'

/** Where the text of a block of HTML stands, in its offsets; undefined where it has only tags, comments and code. */
export function findHtmlText(html: string): Range | undefined {
  let first: number | undefined
  let last = 0
  for (let at = 0; at < html.length; ) {
    const next = findMarkup(html, at)
    const text = html.slice(at, next)
    if (hasLetterOrDigit(text)) {
      first ??= at + text.length - text.trimStart().length
      last = at + text.trimEnd().length
    }
    at = toMarkupEnd(html, next)
  }
  return first === undefined ? undefined : { start: first, end: last }
}

const markup = /[<&]/g

function findMarkup(html: string, from: number): number {
  markup.lastIndex = from
  return markup.exec(html)?.index ?? html.length
}

const reference = /&(?:#\w{1,8}|\w{1,32});/y
// A quoted value may hold what looks like the end of the tag: <img alt="a > b">
const tag = /<(\/?[a-z][\w-]*)(?:[^<>"']|"[^"<]*"|'[^'<]*'){0,500}>/iy
const code = /^(?:script|style)$/i
const codeEnd = /<\/(?:script|style)/gi

/** Where the markup at an offset ends. A `<` or `&` that begins none stands for itself. */
function toMarkupEnd(html: string, at: number): number {
  if (html.startsWith('<!--', at)) return toEnd(html, html.indexOf('-->', at + 4), 3)
  if (html.startsWith('<!', at) || html.startsWith('<?', at)) return toEnd(html, html.indexOf('>', at), 1)
  reference.lastIndex = at
  if (reference.test(html)) return reference.lastIndex
  tag.lastIndex = at
  const name = tag.exec(html)?.[1]
  if (name === undefined) return at + 1
  if (!code.test(name)) return tag.lastIndex
  codeEnd.lastIndex = tag.lastIndex
  return toEnd(html, codeEnd.exec(html)?.index ?? -1, 0)
}

const toEnd = (html: string, found: number, width: number): number => (found === -1 ? html.length : found + width)
