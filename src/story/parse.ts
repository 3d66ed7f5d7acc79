// Source → Markdown trees, a piece at a time: the Markdown parser takes four times as long per byte on a large file.

import type { Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { remarkFrontmatter } from './front-matter.ts'

/** The tree of one piece of the source; its positions count from `base`. */
export interface ParsedPiece {
  readonly root: Root
  readonly base: number
}

const processor = unified().use(remarkParse).use(remarkFrontmatter).freeze()

/** Long enough that the parser's fixed cost does not show, short enough that its growth does not. */
const pieceLength = 4096

const hasCode = /^[ \t>*+-]*(?:`{3}|~{3})/m
const hasRawHtml = /<(?:script|pre|style|textarea|[?!](?!--))/i
const hasDefinition = /^[ \t>*+-]*\[[^\]]+\]:/m

/** Parse Markdown, piece by piece as they are asked for, so that only one tree is held. Throws what the parser throws. */
export function* parseMarkdown(source: string, base = 0): Generator<ParsedPiece> {
  const starts = toPieceStarts(source)
  for (const [index, start] of starts.entries()) {
    const text = source.slice(start, starts[index + 1] ?? source.length)
    // The parser drops a byte order mark without counting it.
    const mark = text.startsWith('\uFEFF') ? 1 : 0
    yield { root: processor.parse(text), base: base + start + mark }
  }
}

/**
 * Where the source can be cut without changing how it reads: after a blank line, before a line that starts at the
 * margin or a very long gap, outside comments and front matter. What reaches across lines in other ways (code, raw HTML, link
 * definitions) is rare in a story; a file that holds any is parsed whole.
 */
function toPieceStarts(source: string): readonly number[] {
  if (source.length < pieceLength * 2 || [hasCode, hasRawHtml, hasDefinition].some((it) => it.test(source))) return [0]
  const starts = [0]
  const blank = /(?:\r\n|\n|\r)[ \t]*(?:\r\n|\n|\r)/g
  let start = 0
  blank.lastIndex = Math.max(pieceLength, frontMatterEnd(source))
  for (let found = blank.exec(source); found; found = blank.exec(source)) {
    const at = findCut(source, found.index + found[0].length)
    if (at === undefined) continue
    const open = start + source.slice(start, at).lastIndexOf('<!--')
    const close = open < start ? open : source.indexOf('-->', open)
    if (open >= start && close === -1) return starts
    if (close >= at) {
      blank.lastIndex = close
      continue
    }
    starts.push(at)
    start = at
    blank.lastIndex = at + pieceLength
  }
  return starts
}

/** How many blank lines are a very long gap: it is cut, wherever the next text stands. */
const longGap = 500

/** The place of a cut after a blank line that ends at `from`: the next line at the margin, or the middle of a very long gap. */
function findCut(source: string, from: number): number | undefined {
  let at = from
  let line = from
  let lines = 0
  for (; at < source.length && /\s/.test(source.charAt(at)); at++) {
    if (source[at] !== '\n' && source[at] !== '\r') continue
    line = at + 1
    lines++
    if (lines >= longGap) return line
  }
  return at === line && at < source.length && source[at] !== '-' ? at : undefined
}

function frontMatterEnd(source: string): number {
  if (!/^\uFEFF?---[ \t]*[\r\n]/.test(source)) return 0
  const close = /[\r\n]---[ \t]*(?:[\r\n]|$)/g
  close.lastIndex = 3
  return close.test(source) ? close.lastIndex : 0
}
