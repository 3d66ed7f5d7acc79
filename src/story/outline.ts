// Walks the Markdown tree once and lists what matters to a story, in order of place: text, headings, rules, pictures.

import type { Nodes } from 'mdast'
import { type FoundComment, findComments } from './comments.ts'
import { toFrontMatter } from './front-matter.ts'
import { maxDepth, tooDeep } from './guard.ts'
import { type InlineExtras, readInlines } from './inlines.ts'
import type { ParsedPiece } from './parse.ts'
import { findDashes, findUnreadHtml } from './problems.ts'
import type { TextMap } from './text-map.ts'
import type { FrontMatter, Range, StoryProblem } from './types.ts'

export interface TextPiece extends Range {
  readonly kind: 'text'
  readonly map: TextMap
  readonly isListItem: boolean
}

export interface HeadingPiece extends Range {
  readonly kind: 'heading'
  readonly map: TextMap
  readonly depth: number
  /** Whether it stands in no list, and so can start a page. */
  readonly isTop: boolean
}

export interface BarePiece extends Range {
  readonly kind: 'rule' | 'picture'
}

export type Piece = TextPiece | HeadingPiece | BarePiece

export interface Outline {
  readonly pieces: Piece[]
  readonly comments: FoundComment[]
  readonly problems: StoryProblem[]
  frontMatter: FrontMatter | undefined
}

/** Parses a stretch of Markdown that the first parse took for HTML. */
export type Reparse = (text: string, base: number) => Iterable<ParsedPiece>

interface Walk {
  readonly source: string
  readonly base: number
  readonly outline: Outline
  readonly extras: InlineExtras
  readonly reparse: Reparse
}

interface Where {
  readonly depth: number
  readonly isListItem: boolean
  /** In a block quote: for the adult, so only its comments matter. */
  readonly isAside: boolean
}

export function createOutline(): Outline {
  return { pieces: [], comments: [], problems: [], frontMatter: undefined }
}

/** Add a parsed piece of the source to an outline. */
export function addToOutline(outline: Outline, source: string, piece: ParsedPiece, reparse: Reparse): void {
  const extras: InlineExtras = {
    html: (start, end) => {
      for (const comment of findComments(source, start, end)) outline.comments.push(comment)
    },
    picture: (start, end) => outline.pieces.push({ kind: 'picture', start, end }),
    tooDeep: (start, end) => addTooDeep(outline, start, end),
  }
  const walk = { source, base: piece.base, outline, extras, reparse }
  for (const node of piece.root.children) visit(node, walk, { depth: 0, isListItem: false, isAside: false })
}

function visit(node: Nodes, walk: Walk, where: Where): void {
  const start = walk.base + (node.position?.start.offset ?? Number.NaN)
  const end = walk.base + (node.position?.end.offset ?? Number.NaN)
  const isTop = where.depth === 0
  if (Number.isNaN(start + end)) return
  if (node.type === 'yaml') {
    walk.outline.frontMatter ??= toFrontMatter(walk.source, node.value, start, end)
  } else if (node.type === 'html') {
    if (where.isAside) walk.extras.html(start, end)
    else if (walk.source.startsWith('<!--', start)) visitCommentLine(walk, start, end)
    else visitHtml(walk, start, end)
  } else if (node.type === 'thematicBreak') {
    if (isTop) walk.outline.pieces.push({ kind: 'rule', start, end })
  } else if ((node.type === 'heading' || node.type === 'paragraph') && !where.isAside) {
    const map = readInlines(node.children, toPlace(walk), walk.extras)
    const { isListItem } = where
    const isEmpty = map.text.trim() === ''
    if (node.type === 'heading') {
      walk.outline.pieces.push({ kind: 'heading', map, depth: node.depth, isTop, start, end })
      // Below a picture, dashes do begin a new page.
      if (!isEmpty) addProblem(walk.outline, findDashes(walk.source, start, end))
    } else if (!isEmpty) walk.outline.pieces.push({ kind: 'text', map, isListItem, start, end })
  } else if ('children' in node) {
    const isAside = where.isAside || node.type === 'blockquote' || node.type === 'footnoteDefinition'
    const inner = { depth: where.depth + 1, isListItem: where.isListItem || node.type === 'listItem', isAside }
    if (inner.depth > maxDepth) walk.extras.tooDeep(start, end)
    else for (const child of node.children) visit(child, walk, inner)
  }
}

function visitHtml(walk: Walk, start: number, end: number): void {
  walk.extras.html(start, end)
  addProblem(walk.outline, findUnreadHtml(walk.source, start, end))
}

/**
 * Markdown takes a line that starts with a comment for HTML as a whole, but its writer means the rest to be read.
 */
function visitCommentLine(walk: Walk, start: number, end: number): void {
  let rest = start
  while (walk.source.startsWith('<!--', rest)) {
    const close = walk.source.indexOf('-->', rest + 4)
    if (close === -1 || close >= end) {
      const message = 'This comment is never closed with `-->`, so everything after it is hidden.'
      walk.outline.problems.push({ code: 'open-comment', message, start: rest, end: rest + 4 })
      return
    }
    walk.extras.html(rest, close + 3)
    rest = close + 3
    while (rest < end && /\s/.test(walk.source[rest] ?? '')) rest++
  }
  if (rest >= end) return
  for (const piece of walk.reparse(walk.source.slice(rest, end), rest)) {
    addToOutline(walk.outline, walk.source, piece, walk.reparse)
  }
}

function addProblem(outline: Outline, problem: StoryProblem | undefined): void {
  if (problem) outline.problems.push(problem)
}

function addTooDeep(outline: Outline, start: number, end: number): void {
  if (!outline.problems.some((it) => it.code === 'too-deep')) outline.problems.push(tooDeep(start, end))
}

function toPlace(walk: Walk) {
  // Block quotes are never read, so no quote mark stands before a line.
  return { source: walk.source, base: walk.base, quotes: 0 }
}
