// Picture cards, each with the tag of its word right below, to be cut apart and matched; and tags alone.

import { type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, toMostSize, toTooWide, type WordPiece } from '../ask.ts'
import { type GridSpec, layBacks, layGrid, type Place } from '../lay/grid.ts'
import { inset, putPicture } from '../lay/pictures.ts'
import { LEAST, toBaseline, toFittingSize } from '../lay/sizes.ts'
import { type MarkedText, putCentred } from '../lay/words.ts'
import type { Item, ReadAs } from '../sheet.ts'

/** Millimetres, the usual ones and large ones; tags of both kinds fit their cards. */
const CARDS = {
  usual: { columns: 2, rows: 4, width: 80, picture: 48, tag: 16 },
  large: { columns: 2, rows: 3, width: 90, picture: 60, tag: 20 },
} as const

const TAGS = {
  usual: { columns: 2, rows: 16, width: 80, height: 16 },
  large: { columns: 2, rows: 12, width: 90, height: 20 },
} as const

/** Air on each side of a word, and above and below its letters. */
const SIDE = 4
const ABOVE = 1.8

/** How far a picture stays off the edge of its card; a back more, since printers move it. */
const ROUND = 3
const BACK = 8

const toCards = (wish: Ask['size']) => (wish === 'large' ? CARDS.large : CARDS.usual)

/** The size that all words of a set share; undefined where one does not fit at the least size. */
export function toSharedSize(
  texts: readonly MarkedText[],
  space: { readonly width: number; readonly height: number },
  { letters, size: wish }: Pick<Ask, 'letters' | 'size'>,
): number | undefined {
  const size = toFittingSize(texts, space, letters, toMostSize(wish, letters))
  return size * letters.xHeight < Math.min(LEAST, typeof wish === 'number' ? wish : LEAST) - 1e-9 ? undefined : size
}

export function layCards(words: readonly WordPiece[], ask: Ask): Result<Laid> {
  const { columns, rows, width, picture: high, tag } = toCards(ask.size)
  const grid: GridSpec = { paper: ask.paper, columns, rows, width, height: high + tag, inner: [high] }
  const texts = words.map(({ text }) => text)
  const size = toSharedSize(texts, { width: width - 2 * SIDE, height: tag - 2 * ABOVE }, ask)
  if (size === undefined) return toTooWide(texts, ask.letters, 'its tag')
  const each = columns * rows
  const toPart = (number: number): number => 2 * Math.floor(number / each)
  const fronts = layGrid(words, grid, ask, ({ text, picture }, place, number) => {
    const part = toPart(number)
    const card = { ...place, height: high }
    return [
      putPicture(picture, inset(card, ROUND), { part, at: 2 * number }),
      ...putWord(text, { ...place, y: place.y + high, height: tag }, size, ask, {
        part,
        at: 2 * number + 1,
        role: 'P',
      }),
    ]
  })
  const counts = [count(words.length, 'card'), count(words.length, 'tag')]
  if (ask.backs === 'none') return succeed({ sheets: fronts, counts })
  const backSize = toSharedSize(texts, { width: width - 2 * BACK, height: high - 2 * BACK }, ask)
  if (backSize === undefined) return toTooWide(texts, ask.letters, 'the back of its card')
  const backs = layBacks(words, grid, ({ text }, place, number) =>
    putWord(text, { ...place, height: high }, Math.min(backSize, 1.5 * size), ask, {
      part: toPart(number) + 1,
      at: number,
      role: 'P',
    }),
  )
  return succeed({ sheets: fronts.flatMap((front, at) => [front, backs[at] ?? front]), duplex: 'long-edge', counts })
}

export function layTags(words: readonly WordPiece[], ask: Ask): Result<Laid> {
  const { columns, rows, width, height } = ask.size === 'large' ? TAGS.large : TAGS.usual
  const grid: GridSpec = { paper: ask.paper, columns, rows, width, height }
  const texts = words.map(({ text }) => text)
  const size = toSharedSize(texts, { width: width - 2 * SIDE, height: height - 2 * ABOVE }, ask)
  if (size === undefined) return toTooWide(texts, ask.letters, 'its tag')
  const sheets = layGrid(texts, grid, ask, (text, place, number) =>
    putWord(text, place, size, ask, { part: Math.floor(number / (columns * rows)), at: number, role: 'P' }),
  )
  return succeed({ sheets, counts: [count(words.length, 'tag')] })
}

/** A word in the middle of a place. */
export const putWord = (
  text: MarkedText,
  { x, y, width, height }: Place,
  size: number,
  { letters }: Pick<Ask, 'letters'>,
  readAs: ReadAs,
): readonly Item[] => putCentred(text, x + width / 2, toBaseline(y, height, size, letters), { letters, size, readAs })
