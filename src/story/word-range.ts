// Which part of the source goes when another word takes the place of one: its letters, and the emphasis that is all its own.

import type { Nodes } from 'mdast'
import { type ParsedPiece, parseMarkdown } from './parse.ts'
import type { Range } from './types.ts'

/** From the range of a word's letters to the one to replace. Undefined where that would break what stands around. */
export type FindWordRange = (letters: Range) => Range | undefined

const onlyLetters = /^[\p{L}\p{M}\p{N}'’-]+$/u

/**
 * `**sh**ee*p*` goes as a whole, of `**night**` the letters go, and `**The ni**ght` cannot give up its second word.
 * The source is parsed once, and only for a word with something between its letters.
 */
export function createWordRanges(source: string): FindWordRange {
  let pieces: readonly ParsedPiece[] | undefined
  return ({ start, end }) => {
    if (onlyLetters.test(source.slice(start, end))) return { start, end }
    pieces ??= [...parseMarkdown(source)]
    for (const { root, base } of pieces) {
      const letters = { start: start - base, end: end - base }
      const text = findText(root, letters)
      const range = text && widen(letters, listInlines(text, letters))
      if (text) return range && { start: range.start + base, end: range.end + base }
    }
    return undefined
  }
}

/** The paragraph or heading that holds the letters. */
function findText(node: Nodes, letters: Range): Nodes | undefined {
  if (node.type === 'paragraph' || node.type === 'heading') return node
  for (const child of listTouched(node, letters)) {
    const found = findText(child, letters)
    if (found) return found
  }
  return undefined
}

/** A node among the letters that is more than text: emphasis, a link, a comment. */
interface Inline extends Range {
  readonly isEmphasis: boolean
  /** What stands between its marks; undefined where nothing does. */
  readonly content: Range | undefined
}

/** Innermost first. */
function listInlines(node: Nodes, letters: Range): readonly Inline[] {
  return listTouched(node, letters).flatMap((child): readonly Inline[] => {
    const at = toRange(child)
    if (!at || child.type === 'text') return []
    const isEmphasis = child.type === 'emphasis' || child.type === 'strong'
    return [...listInlines(child, letters), { ...at, isEmphasis, content: toContent(child) }]
  })
}

function listTouched(node: Nodes, letters: Range): readonly Nodes[] {
  const children: readonly Nodes[] = 'children' in node ? node.children : []
  return children.filter((child) => {
    const at = toRange(child)
    return at && at.start < letters.end && letters.start < at.end
  })
}

function widen(letters: Range, inlines: readonly Inline[]): Range | undefined {
  let range = letters
  for (const { start, end, content, isEmphasis } of inlines) {
    if (content && holds(content, range)) continue
    if (!content || !isEmphasis || !holds(range, content)) return undefined
    range = { start: Math.min(range.start, start), end: Math.max(range.end, end) }
  }
  return range
}

const holds = (outer: Range, inner: Range): boolean => outer.start <= inner.start && inner.end <= outer.end

function toContent(node: Nodes): Range | undefined {
  const children: readonly Nodes[] = 'children' in node ? node.children : []
  const [first, last] = [children[0], children.at(-1)]
  const start = first && toRange(first)?.start
  const end = last && toRange(last)?.end
  return start === undefined || end === undefined ? undefined : { start, end }
}

function toRange({ position }: Nodes): Range | undefined {
  const start = position?.start.offset
  const end = position?.end.offset
  return start === undefined || end === undefined ? undefined : { start, end }
}
