// Cuts the text of a block into runs of letters, marks and white space, each with its place in the source.

import type { SentenceContent } from 'nlcst'
import type { Point } from 'unist'
import { classOf, invisible, letter, punctuation, symbol, white } from './characters.ts'
import type { Lines } from './lines.ts'
import { type TextMap, toSourceEnd, toSourceStart } from './text-map.ts'

/**
 * The tokens of a stretch of text, in the shape that retext's Latin parser gives its own: but with places in the
 * source (where `lines` are given), whole code points, emoji in one piece, and marks that no reader sees kept with
 * what they follow.
 */
export function tokenize(map: TextMap, from: number, to: number, lines: Lines | undefined): SentenceContent[] {
  const tokens: SentenceContent[] = []
  const { text } = map
  let start = from
  let kind = -1
  let previous = -1
  for (let at = from; at < to; ) {
    const code = text.codePointAt(at) ?? 0
    const width = code > 0xffff ? 2 : 1
    const next = toClass(text, at, code, kind, to)
    if (kind !== -1 && !continues(kind, next, previous, code)) {
      tokens.push(toToken(map, kind, start, at, lines))
      start = at
    }
    kind = next
    previous = code
    at += width
  }
  if (start < to) tokens.push(toToken(map, kind, start, to, lines))
  return tokens
}

/** What no reader sees takes the class of what stands before it, or after a mark the class of what follows. */
function toClass(text: string, at: number, code: number, kind: number, to: number): number {
  const own = classOf(code)
  if (code === 0x2c && isThousands(text, at)) return letter
  if (own !== invisible) return own
  if (kind !== -1 && kind !== punctuation) return kind
  let next = at + 1
  while (next < to && classOf(text.codePointAt(next) ?? 0) === invisible) next++
  return next < to ? classOf(text.codePointAt(next) ?? 0) : white
}

// 1,000
//  ^
function isThousands(text: string, at: number): boolean {
  return /\d/.test(text.charAt(at - 1)) && /^\d{3}(?!\d)/.test(text.slice(at + 1, at + 5))
}

function continues(kind: number, next: number, previous: number, code: number): boolean {
  if (kind !== next) return false
  if (kind === letter || kind === white || previous === code) return true
  return kind === symbol && joinsEmoji(previous, code)
}

/** Joiners, skin tones and the letter pairs of flags. */
function joinsEmoji(previous: number, code: number): boolean {
  if (code >= 0x1f3fb && code <= 0x1f3ff) return true
  if (code >= 0x1f1e6 && code <= 0x1f1ff) return previous >= 0x1f1e6 && previous <= 0x1f1ff
  return previous === 0x200d || classOf(code) === invisible
}

function toToken(map: TextMap, kind: number, from: number, to: number, lines: Lines | undefined): SentenceContent {
  const value = map.text.slice(from, to)
  const type = kind === white ? 'WhiteSpaceNode' : kind === punctuation ? 'PunctuationNode' : 'SymbolNode'
  if (!lines) {
    return kind === letter ? { type: 'WordNode', children: [{ type: 'TextNode', value }] } : { type, value }
  }
  const start = toPoint(lines, toSourceStart(map, from))
  const end = toPoint(lines, toSourceEnd(map, to))
  if (kind !== letter) return { type, value, position: { start, end } }
  const text = { type: 'TextNode' as const, value, position: { start, end } }
  return { type: 'WordNode', children: [text], position: { start, end } }
}

function toPoint(lines: Lines, offset: number): Point {
  const { line, column } = lines.toPoint(offset)
  return { line, column, offset }
}
