// Walks the Markdown tree once and lists what matters to a story, in order of place: text, headings, rules, pictures.

import type { Heading, Nodes, Paragraph } from 'mdast'
import { type FoundComment, findComments } from './comments.ts'
import { toFrontMatter } from './front-matter.ts'
import { maxDepth, tooDeep } from './guard.ts'
import { type InlineExtras, type Inlines, readInlines } from './inlines.ts'
import type { ParsedPiece } from './parse.ts'
import { createPictureReader, type PictureText } from './pictures.ts'
import { findDashes, findUnreadHtml } from './problems.ts'
import type { Block, FrontMatter, Note, Oddity, Range } from './types.ts'

/** A block that was made while a story is held, and what is known of it for as long as its text stays. */
export interface Home {
  readonly block: Block
  readonly page: number
  readonly words: WordCount
  /** The block where it last stood elsewhere. */
  last: { readonly block: Block; readonly page: number } | undefined
}

export interface WordCount {
  readonly words: number
  /** Those with letters that are not Latin. */
  readonly foreign: number
}

interface Movable {
  /** Known while a story is held: the block that was made of this text. */
  home?: Home | undefined
  /** While a story is held: how far it stands from where its text was read, so from all places in its map. */
  moved?: number
}

export interface TextPiece extends Range, Inlines, Movable {
  readonly kind: 'text'
  readonly isListItem: boolean
}

export interface HeadingPiece extends Range, Inlines, Movable {
  readonly kind: 'heading'
  readonly depth: number
  /** Whether it stands in no list, and so can start a page. */
  readonly isTop: boolean
}

interface BarePiece extends Range {
  readonly kind: 'rule' | 'picture'
}

export type Piece = TextPiece | HeadingPiece | BarePiece

/** A picture before its page is known. */
export interface FoundPicture extends Range, PictureText {
  readonly inNote: boolean
}

/** A text for the adult before its page is known. */
export interface FoundNote extends Range, Inlines {
  readonly kind: Note['kind']
}

export interface Outline {
  readonly pieces: Piece[]
  readonly pictures: FoundPicture[]
  readonly notes: FoundNote[]
  readonly comments: FoundComment[]
  readonly problems: Oddity[]
  frontMatter: FrontMatter | undefined
}

/** Parses a stretch of Markdown that the first parse took for HTML. */
export type Reparse = (text: string, base: number) => Iterable<ParsedPiece>

interface Walk {
  readonly source: string
  readonly base: number
  readonly outline: Outline
  readonly extras: InlineExtras
  /** The same for what is for the adult: its pictures cut no pages. */
  readonly asideExtras: InlineExtras
  readonly reparse: Reparse
}

interface Where {
  readonly depth: number
  readonly isListItem: boolean
  /** In a block quote or a footnote: for the adult. */
  readonly aside: 'quote' | 'footnote' | undefined
  /** How many block quotes hold it. */
  readonly quotes: number
}

export function createOutline(): Outline {
  return { pieces: [], pictures: [], notes: [], comments: [], problems: [], frontMatter: undefined }
}

/** Add a parsed piece of the source to an outline. */
export function addToOutline(outline: Outline, source: string, piece: ParsedPiece, reparse: Reparse): void {
  const readPicture = createPictureReader(piece.root)
  const extras: InlineExtras = {
    html: (start, end) => {
      for (const comment of findComments(source, start, end)) outline.comments.push(comment)
    },
    picture: (node, start, end) => {
      outline.pieces.push({ kind: 'picture', start, end })
      outline.pictures.push({ ...readPicture(node), start, end, inNote: false })
    },
    tooDeep: (start, end) => addTooDeep(outline, start, end),
  }
  const asideExtras: InlineExtras = {
    ...extras,
    picture: (node, start, end) => outline.pictures.push({ ...readPicture(node), start, end, inNote: true }),
  }
  const walk = { source, base: piece.base, outline, extras, asideExtras, reparse }
  const where = { depth: 0, isListItem: false, aside: undefined, quotes: 0 }
  for (const node of piece.root.children) visit(node, walk, where)
}

function visit(node: Nodes, walk: Walk, where: Where): void {
  const start = walk.base + (node.position?.start.offset ?? Number.NaN)
  const end = walk.base + (node.position?.end.offset ?? Number.NaN)
  const isTop = where.depth === 0
  if (Number.isNaN(start + end)) return
  if (node.type === 'yaml') {
    walk.outline.frontMatter ??= toFrontMatter(walk.source, node.value, start, end)
  } else if (node.type === 'html') {
    if (where.aside) walk.extras.html(start, end)
    else if (walk.source.startsWith('<!--', start)) visitCommentLine(walk, start, end)
    else visitHtml(walk, start, end)
  } else if (node.type === 'thematicBreak') {
    if (isTop) walk.outline.pieces.push({ kind: 'rule', start, end })
  } else if (node.type === 'heading' || node.type === 'paragraph') {
    visitText(node, walk, where, { start, end })
  } else if ('children' in node) {
    const inner = toInner(node, where)
    if (inner.depth > maxDepth) walk.extras.tooDeep(start, end)
    else for (const child of node.children) visit(child, walk, inner)
  }
}

function visitText(node: Heading | Paragraph, walk: Walk, where: Where, { start, end }: Range): void {
  const { source, base, outline } = walk
  const { aside, isListItem, quotes } = where
  const inlines = readInlines(node.children, { source, base, quotes }, aside ? walk.asideExtras : walk.extras)
  const isEmpty = inlines.map.text.trim() === ''
  if (aside) {
    if (!isEmpty) outline.notes.push({ kind: aside, ...inlines, start, end })
  } else if (node.type === 'heading') {
    outline.pieces.push({ kind: 'heading', ...inlines, depth: node.depth, isTop: where.depth === 0, start, end })
    // Below a picture, dashes do begin a new page.
    if (!isEmpty) addProblem(outline, findDashes(source, start, end))
  } else if (!isEmpty) outline.pieces.push({ kind: 'text', ...inlines, isListItem, start, end })
}

function toInner({ type }: Nodes, where: Where): Where {
  const isQuote = type === 'blockquote'
  return {
    depth: where.depth + 1,
    isListItem: where.isListItem || type === 'listItem',
    aside: where.aside ?? (isQuote ? 'quote' : type === 'footnoteDefinition' ? 'footnote' : undefined),
    quotes: where.quotes + Number(isQuote),
  }
}

function visitHtml(walk: Walk, start: number, end: number): void {
  walk.extras.html(start, end)
  addProblem(walk.outline, findUnreadHtml(walk.source, start, end))
}

/** With the white space behind it. */
const closedComment = /^<!--[\s\S]*?-->\s*/

/**
 * Markdown takes a line that starts with a comment for HTML as a whole, but its writer means the rest to be read.
 */
function visitCommentLine(walk: Walk, start: number, end: number): void {
  let rest = start
  while (walk.source.startsWith('<!--', rest)) {
    const comment = closedComment.exec(walk.source.slice(rest, end))?.[0]
    if (comment === undefined) {
      const message = 'This comment is never closed with `-->`, so everything after it is hidden.'
      walk.outline.problems.push({ code: 'open-comment', message, start: rest, end: rest + 4 })
      return
    }
    walk.extras.html(rest, rest + comment.length)
    rest += comment.length
  }
  for (const piece of walk.reparse(walk.source.slice(rest, end), rest)) {
    addToOutline(walk.outline, walk.source, piece, walk.reparse)
  }
}

function addProblem(outline: Outline, problem: Oddity | undefined): void {
  if (problem) outline.problems.push(problem)
}

function addTooDeep(outline: Outline, start: number, end: number): void {
  if (!outline.problems.some((it) => it.code === 'too-deep')) outline.problems.push(tooDeep(start, end))
}
