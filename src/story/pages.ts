// Cuts the outline of a story into its title and its pages.

import { findCredits } from './credits.ts'
import type { HeadingPiece, Piece, TextPiece } from './outline.ts'
import type { StoryOptions } from './types.ts'

/** The pieces of one page; `start` is where its first break or piece stands. */
interface PageCut {
  readonly start: number
  readonly end: number
  readonly pieces: readonly (TextPiece | HeadingPiece)[]
}

export interface Cut {
  readonly title: HeadingPiece | undefined
  /** From where the credits begin to the end. */
  readonly credits: readonly Piece[]
  readonly pages: readonly PageCut[]
}

/** `Page 3` or `3`: says where the reader is, and is not read out. */
const label = /^\s*(?:page\s*)?\d*\s*[.:]?\s*$/i

/** The title is among the pieces of the first page. */
export function cutPages(all: readonly Piece[], pages?: StoryOptions['pages']): Cut {
  const creditsAt = findCredits(all)
  const pieces = all.slice(0, creditsAt)
  const title = findTitle(pieces)
  const isBreak = toBreakTest(pieces, title, pages)
  const sections: [Section, ...Section[]] = [{ lead: undefined, pieces: [] }]
  for (const piece of pieces) {
    if (piece !== title && isBreak(piece)) sections.push({ lead: piece, pieces: [] })
    if (piece.kind !== 'rule') (sections.at(-1) as Section).pieces.push(piece)
  }
  const cut = joinOuter(sections, title).map((it) => toPage(it, title))
  return { title, credits: all.slice(creditsAt), pages: cut }
}

interface Section {
  /** The break that it starts with. */
  readonly lead: Piece | undefined
  readonly pieces: Piece[]
}

/** The first heading of depth 1, when nothing but comments or a picture stands before it. */
function findTitle(pieces: readonly Piece[]): HeadingPiece | undefined {
  const first = pieces.find((it) => it.kind !== 'picture' && it.kind !== 'rule')
  return first?.kind === 'heading' && first.depth === 1 && first.map.text.trim() !== '' ? first : undefined
}

function toBreakTest(
  pieces: readonly Piece[],
  title: HeadingPiece | undefined,
  pages: StoryOptions['pages'],
): (piece: Piece) => boolean {
  if (pages === 'rule') return (it) => it.kind === 'rule'
  if (typeof pages === 'number') return (it) => isHeading(it, pages)
  const headings = pieces.filter((it): it is HeadingPiece => it.kind === 'heading' && it.isTop)
  const empty = new Set(headings.filter((it) => it.map.text.trim() === '').map((it) => it.depth))
  if (empty.size > 0 || pieces.some((it) => it.kind === 'rule')) {
    return (it) => it.kind === 'rule' || (it.kind === 'heading' && it.isTop && empty.has(it.depth))
  }
  const others = headings.filter((it) => it !== title)
  const repeated = [2, 3, 4, 5, 6].find((depth) => others.filter((it) => it.depth === depth).length > 1)
  // Two headings of depth 1 are two pages, though the first of them is the title.
  const depth = others.some((it) => it.depth === 1) ? 1 : repeated
  return (it) => isHeading(it, depth)
}

function isHeading(piece: Piece, depth: number | undefined): boolean {
  return piece.kind === 'heading' && piece.isTop && piece.depth === depth
}

/**
 * A title or a cover picture before the first break is no page of its own: it joins the next, as does a cover text
 * before a heading `Page 1`. After the last break, nothing at all is no page either. An empty page between two breaks
 * stays, so that the numbers match the book.
 */
function joinOuter(sections: readonly [Section, ...Section[]], title: HeadingPiece | undefined): Section[] {
  const [first, second, ...others] = sections
  const hasText = first.pieces.some((it) => it !== title && isRead(it))
  const isCover = second?.lead?.kind === 'heading' && /^\s*(?:page\s*)?1\b/i.test(second.lead.map.text)
  const joined = second && { lead: second.lead, pieces: [...first.pieces, ...second.pieces] }
  const result = joined && (!hasText || isCover) ? [joined, ...others] : [...sections]
  while (result.at(-1)?.pieces.every((it) => it !== title && it.kind === 'heading' && !isRead(it))) result.pop()
  return result
}

function isRead(piece: Piece): piece is TextPiece | HeadingPiece {
  return piece.kind === 'text' || (piece.kind === 'heading' && !label.test(piece.map.text))
}

function toPage(section: Section, title: HeadingPiece | undefined): PageCut {
  const pieces = section.pieces.filter((it): it is TextPiece | HeadingPiece => it === title || isRead(it))
  // A picture in a paragraph is listed before it.
  const starts = [section.lead, section.pieces[0], pieces[0]].map((it) => it?.start ?? Number.POSITIVE_INFINITY)
  const start = Math.min(...starts)
  return { start, end: pieces.at(-1)?.end ?? section.lead?.end ?? start, pieces }
}
