// Source → Markdown trees, a part at a time.

import type { Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { readYamlNode } from './front-matter.ts'
import { parseStretches } from './parse-stretches.ts'
import { cutParts, type Part } from './parts.ts'

/** The tree of one part of the source; its positions count from `base`. */
export interface ParsedPiece {
  readonly root: Root
  readonly base: number
}

const parser = unified().use(remarkParse).freeze()

/**
 * Parse Markdown, part by part as they are asked for, so that only one tree is held: the parser takes four times as long
 * per byte on a large file. Blocks of plain text, most of a story, do not need it. Throws what the parser throws.
 * @param base where the source stands in a file; 0 for a whole file, whose top may hold front matter
 */
export function* parseMarkdown(source: string, base = 0): Generator<ParsedPiece> {
  const top = base === 0 ? readYamlNode(source) : undefined
  if (top) yield { root: { type: 'root', children: [top.node] }, base: 0 }
  for (const part of cutParts(source, top?.end ?? 0)) yield parsePart(source, part, base)
}

export function parsePart(source: string, part: Part, base = 0): ParsedPiece {
  const { start, end, nodes, cuts = [] } = part
  if (nodes) return { root: { type: 'root', children: nodes }, base: base + start }
  const whole = cuts.length > 0 ? parseStretches(source, { start, end, cuts }, (text) => parser.parse(text)) : undefined
  return whole ? { root: whole, base: base + start } : parse(source.slice(start, end), base + start)
}

/** The parser drops a byte order mark without counting it. */
const parse = (text: string, base: number): ParsedPiece => ({
  root: parser.parse(text),
  base: text.startsWith('\uFEFF') ? base + 1 : base,
})
