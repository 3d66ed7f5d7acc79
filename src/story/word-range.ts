// Which part of the source goes when another word takes the place of one: its letters, and the emphasis that is all its own.

import type { Nodes } from 'mdast'
import { isPlainText } from '../letter-kinds.ts'
import type { Reparse } from './outline.ts'
import { parseMarkdown } from './parse.ts'
import type { Range } from './types.ts'

/** A mark, and what stands in it: `**oa**` and `oa`. */
interface Mark extends Range {
  readonly kind: 'emphasis' | 'html' | 'other'
  readonly inner: Range
}

/**
 * From the range of a word's letters to the one to replace. Undefined where a mark reaches beyond the word, or is more than
 * emphasis: a link or a comment would be lost.
 */
export type FindWordRange = (letters: Range) => Range | undefined

const isOnlyLetters = (text: string): boolean =>
  isPlainText(text) ? /^[A-Za-z0-9'’-]+$/.test(text) : /^[\p{L}\p{M}\p{N}'’-]+$/u.test(text)

/**
 * `**sh**ee*p*` goes as a whole, of `**night**` the letters go, and `**The ni**ght` cannot give up its second word.
 * The source is parsed once, and only for a word with something between its letters.
 */
export function createWordRanges(source: string, parse: Reparse = parseMarkdown): FindWordRange {
  let marks: readonly Mark[] | undefined
  return (letters) => {
    if (isOnlyLetters(source.slice(letters.start, letters.end))) return letters
    marks ??= [...listMarks(parse, source)]
    return widen(letters, marks, source)
  }
}

function widen(letters: Range, marks: readonly Mark[], source: string): Range | undefined {
  let { start, end } = letters
  const tags: string[] = []
  // The innermost first, so that each is held against the word with the marks that stand in it.
  for (const { kind, inner, ...mark } of marks) {
    if (mark.end <= start || mark.start >= end || (inner.start <= start && end <= inner.end)) continue
    if (kind === 'html') tags.push(source.slice(mark.start, mark.end))
    else if (kind === 'other' || inner.start < start || inner.end > end) return undefined
    else {
      start = Math.min(start, mark.start)
      end = Math.max(end, mark.end)
    }
  }
  return areClosed(tags) && !/[\r\n]/.test(source.slice(start, end)) ? { start, end } : undefined
}

/** Whether each tag that is opened is closed again; what is no tag, such as a comment, never is. */
function areClosed(tags: readonly string[]): boolean {
  const open: string[] = []
  for (const tag of tags) {
    const [, slash, name] = /^<(\/?)([a-z][a-z0-9]*)[^>]*>$/i.exec(tag) ?? []
    if (name === undefined) return false
    if (slash !== '/') open.push(name.toLowerCase())
    else if (open.pop() !== name.toLowerCase()) return false
  }
  return open.length === 0
}

/** From the inside to the outside; of neighbours, in order of place. `text` stands at `from`. */
function* listMarks(parse: Reparse, source: string, text = source, from = 0): Generator<Mark> {
  for (const { root, base } of parse(text, from)) yield* listIn(parse, root, base, source)
}

function* listIn(parse: Reparse, node: Nodes, base: number, source: string): Generator<Mark> {
  const children: readonly Nodes[] = 'children' in node ? node.children : []
  for (const child of children) yield* listIn(parse, child, base, source)
  const own = toRange(node, node, base)
  if (own === undefined || node.type === 'text') return
  const inner = toRange(children[0], children.at(-1), base) ?? { start: own.end, end: own.end }
  const comments = node.type === 'html' ? measureComments(source.slice(own.start, own.end)) : 0
  const rest = own.start + comments
  if (comments > 0 && rest < own.end) yield* listMarks(parse, source, source.slice(rest, own.end), rest)
  else yield { ...own, inner, kind: KINDS[node.type] ?? 'other' }
}

const KINDS: Readonly<Record<string, Mark['kind']>> = { emphasis: 'emphasis', html: 'html', strong: 'emphasis' }

function toRange(first: Nodes | undefined, last: Nodes | undefined, base: number): Range | undefined {
  const [start, end] = [first?.position?.start.offset, last?.position?.end.offset]
  return start === undefined || end === undefined ? undefined : { start: base + start, end: base + end }
}

/** A line that begins with a comment is one piece of HTML to Markdown, but a child reads the rest of it. */
const measureComments = (html: string): number => /^(?:<!--.*?-->\s*)+/su.exec(html)?.[0].length ?? 0
