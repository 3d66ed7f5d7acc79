// One page of a booklet: its pictures and its text, laid out at a size, if they fit.

import type { Shown } from '../ask.ts'
import type { BookBlock, BookPage } from '../book.ts'
import { FOOT, putFoot } from '../lay/foot.ts'
import { type Line, toLines } from '../lay/lines.ts'
import { EDGE } from '../lay/paper.ts'
import { putLines, toHeight } from '../lay/paragraph.ts'
import { putPicture } from '../lay/pictures.ts'
import { toHead, unmarked } from '../lay/words.ts'
import type { Letters } from '../letters.ts'
import type { Item } from '../sheet.ts'

/** The size of a page and what is left free around it. */
export interface PageShape {
  readonly width: number
  readonly height: number
  readonly side: number
  readonly top: number
  /** The page number stands in it. */
  readonly foot: number
}

export interface PageStyle {
  readonly letters: Letters
  readonly size: number
  /** Which part of the whole it is when it is read aloud. */
  readonly part: number
}

/** A picture is given at least so much of the height; with less it is a stamp. */
const PICTURE_SHARE = 0.3
const BETWEEN = 1.1

interface SetBlock {
  readonly kind: BookBlock['kind']
  readonly lines: readonly Line[]
}

/** The items of the page; undefined where they do not fit at this size. */
export function putPage(page: BookPage, shape: PageShape, style: PageStyle): readonly Item[] | undefined {
  const { letters, size, part } = style
  const width = shape.width - 2 * shape.side
  const height = shape.height - shape.top - shape.foot
  const blocks: SetBlock[] = []
  for (const { kind, text } of page.blocks) {
    const lines = toLines(kind === 'heading' ? toHead(text.text) : text, width, size, letters)
    if (!lines) return undefined
    blocks.push({ kind, lines })
  }
  const gap = BETWEEN * size
  const text = sumHeights(blocks, letters, size, gap)
  const shown = [...page.above, ...page.below]
  const forPictures = height - text - (text > 0 && shown.length > 0 ? gap * (1 + Math.min(1, page.below.length)) : 0)
  if (forPictures < 0 || (shown.length > 0 && forPictures < PICTURE_SHARE * height)) return undefined
  const each = shown.length > 0 ? forPictures / shown.length : 0
  const start = shown.length > 0 ? shape.top : shape.top + (height - text) * 0.42
  let y = start
  let at = 0
  const items: Item[] = []
  const putAll = (pictures: readonly Shown[]): void => {
    for (const picture of pictures) {
      const place = { x: shape.side, y: y + 1, width, height: each - 2 }
      items.push(putPicture(picture, place, { part, at: at++ }))
      y += each
    }
  }
  putAll(page.above)
  if (page.above.length > 0 && text > 0) y += gap
  for (const { kind, lines } of blocks) {
    items.push(
      ...putLines(
        lines,
        { x: shape.side, y, width },
        {
          ...{ letters, size, align: 'centre' },
          readAs: { part, at: at++, role: kind === 'heading' ? 'H2' : 'P' },
        },
      ),
    )
    y += toHeight(lines.length, letters, size) + gap
  }
  putAll(page.below)
  return [...items, ...putNumber(page.number, shape, letters)]
}

const sumHeights = (blocks: readonly SetBlock[], letters: Letters, size: number, gap: number): number =>
  blocks.reduce((sum, { lines }) => sum + toHeight(lines.length, letters, size), 0) +
  Math.max(0, blocks.length - 1) * gap

const NUMBER_SIZE = 4

function putNumber(number: number, { width, height, foot }: PageShape, letters: Letters): readonly Item[] {
  const text = String(number)
  const size = Math.min(NUMBER_SIZE, foot / 3)
  const x = (width - letters.widthOf(text, size)) / 2
  return [
    { kind: 'text', text, face: 'plain', ink: 'quiet', size, x, baseline: height - Math.max(EDGE + 0.5, foot * 0.55) },
  ]
}

/** Title and picture of the cover; undefined where the title does not fit. */
export function putCover(
  { title, cover }: { readonly title: string; readonly cover: Shown | undefined },
  shape: PageShape,
  { letters, size, part }: PageStyle,
): readonly Item[] | undefined {
  const width = shape.width - 2 * shape.side
  const height = shape.height - 2 * shape.top
  for (let own = size * 1.35; own >= size * 0.8; own *= 0.95) {
    const lines = toLines(toHead(title), width, own, letters)
    const text = lines ? toHeight(lines.length, letters, own, 1.3) : Infinity
    if (!lines || text > height * (cover ? 0.45 : 0.8)) continue
    const y = cover ? shape.top + height * 0.04 : shape.top + (height - text) * 0.38
    const top = y + text + own
    const place = { x: shape.side, y: top, width, height: shape.top + height - top }
    return [
      ...putLines(
        lines,
        { x: shape.side, y, width },
        {
          ...{ letters, size: own, align: 'centre', lineSpace: 1.3 },
          readAs: { part, at: 0, role: 'H1' },
        },
      ),
      ...(cover ? [putPicture(cover, place, { part, at: 1 })] : []),
    ]
  }
  return undefined
}

/** The page for the grown-up, in small letters; undefined where it does not fit even in the smallest. */
export function putGrownUp(
  paragraphs: readonly string[],
  shape: PageShape,
  { letters, part }: Pick<PageStyle, 'letters' | 'part'>,
): readonly Item[] | undefined {
  const [head = '', ...others] = paragraphs
  const width = shape.width - 2 * shape.side
  const height = shape.height - shape.top - Math.max(shape.foot, FOOT)
  for (let size = 4; size >= 2.1; size -= 0.1) {
    const set = [toHead(head), ...others.map(unmarked)].map((text) => toLines(text, width, size, letters))
    const gap = 0.7 * size
    const heights = set.map((lines) => (lines ? toHeight(lines.length, letters, size, 1.35) : Infinity))
    if (heights.reduce((sum, own) => sum + own + gap, -gap) > height) continue
    let y = shape.top
    const foot = putFoot(shape, letters, shape.side - 3)
    const text = set.flatMap((lines, at) => {
      const own = putLines(
        lines ?? [],
        { x: shape.side, y, width },
        {
          ...{ letters, size, align: 'left', lineSpace: 1.35 },
          readAs: { part, at, role: at === 0 ? 'H2' : 'P' },
        },
      )
      y += (heights[at] ?? 0) + gap
      return own
    })
    return [...text, ...foot]
  }
  return undefined
}
