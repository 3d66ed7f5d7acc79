// Where the pages of a text that is brought in begin.

import type { Note, NoteCode, Piece } from './types.ts'

export type PagesBy = 'auto' | 'breaks' | 'headings' | 'pictures' | 'empty-lines' | 'none'

export interface Paged {
  readonly pages: readonly (readonly Piece[])[]
  readonly notes: readonly Note[]
}

/** How many empty lines in a row push a text over to the next page, where nobody set a page break. */
const LEAP = 3

/**
 * By itself: where the writer began a page, and at each heading after the title. Where there is neither, at the pictures;
 * where there is no picture, where the writer pressed Enter until the next page came. `by` asks for one of these alone.
 */
export function cutPages(pieces: readonly Piece[], by: PagesBy = 'auto'): Paged {
  const way = by === 'auto' ? findWay(pieces) : by
  const starts = findStarts(pieces, way)
  const pages: Piece[][] = [[]]
  for (const [at, piece] of pieces.entries()) {
    if (starts.has(at)) pages.push([])
    if (piece.kind !== 'break' && piece.kind !== 'gap') pages.at(-1)?.push(piece)
  }
  return { pages: joinCover(pages.filter((page) => page.length > 0)), notes: by === 'auto' ? toNotes(way) : [] }
}

type Way = PagesBy | 'breaks-and-headings'

function findWay(pieces: readonly Piece[]): Way {
  const isMarked = pieces.some(({ kind }, at) => kind === 'break' || (kind === 'heading' && !isFirstText(pieces, at)))
  if (isMarked) return 'breaks-and-headings'
  if (pieces.filter(({ kind }) => kind === 'picture').length > 1) return 'pictures'
  return findLeaps(pieces).size > 0 ? 'empty-lines' : 'none'
}

function findStarts(pieces: readonly Piece[], way: Way): ReadonlySet<number> {
  if (way === 'none' || way === 'auto') return new Set()
  if (way === 'empty-lines') return findLeaps(pieces)
  if (way === 'pictures') return findPictureStarts(pieces)
  const starts = pieces.flatMap(({ kind }, at) => {
    if (kind === 'break') return way === 'headings' ? [] : [at]
    return kind === 'heading' && way !== 'breaks' && !isFirstText(pieces, at) ? [at] : []
  })
  return new Set(starts)
}

const isRead = ({ kind }: Piece): boolean => kind === 'text' || kind === 'heading' || kind === 'title'

const isFirstText = (pieces: readonly Piece[], at: number): boolean => !pieces.slice(0, at).some(isRead)

/** A picture begins its page where the first one stands before the text, else it ends its page. */
function findPictureStarts(pieces: readonly Piece[]): ReadonlySet<number> {
  const isPicture = (at: number): boolean => pieces[at]?.kind === 'picture'
  const story = pieces.findIndex(({ kind }) => kind === 'text')
  const first = pieces.findIndex(({ kind }) => kind === 'picture')
  const isAbove = first < story
  return new Set(pieces.flatMap((_, at) => (at > 0 && isPicture(isAbove ? at : at - 1) ? [at] : [])))
}

function findLeaps(pieces: readonly Piece[]): ReadonlySet<number> {
  const starts = new Set<number>()
  let empty = 0
  for (const [at, { kind }] of pieces.entries()) {
    if (kind !== 'gap' && empty >= LEAP && at > empty) starts.add(at)
    empty = kind === 'gap' ? empty + 1 : 0
  }
  return starts
}

/** A title, or a picture with nothing to read, is the cover: it stands with the first page, as `check` counts pages. */
function joinCover(pages: readonly (readonly Piece[])[]): readonly (readonly Piece[])[] {
  const [first, second, ...others] = pages
  if (!first || !second || first.some((piece) => isRead(piece) && piece.kind === 'text')) return pages
  return [[...first, ...second], ...others]
}

function toNotes(way: Way): readonly Note[] {
  const code: NoteCode | undefined =
    way === 'pictures' ? 'pictures-are-pages' : way === 'empty-lines' ? 'empty-lines-are-pages' : undefined
  return code === undefined ? [] : [{ code, count: 1 }]
}
