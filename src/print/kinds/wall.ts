// Sheets for the word wall: big words under the letter or the pattern that they share, with a head card for each group.

import { type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, toTooWide, type WordPiece } from '../ask.ts'
import { type GridSpec, layGrid } from '../lay/grid.ts'
import { onSide } from '../lay/paper.ts'
import { inset } from '../lay/pictures.ts'
import { toFittingSize } from '../lay/sizes.ts'
import { toHead } from '../lay/words.ts'
import type { Item } from '../sheet.ts'
import { putWord } from './cards.ts'

export interface WallGroup {
  /** `a`, `-at`, `ai`. */
  readonly head: string
  readonly words: readonly WordPiece[]
}

const STRIP = { columns: 1, rows: 3, width: 255, height: 58 } as const
/** To be read across a room: the height of the small x (own choice); long words make all smaller, down to the least. */
const USUAL = 24
const LEAST_ON_WALL = 14

export function layWall(groups: readonly WallGroup[], ask: Ask): Result<Laid> {
  const { letters } = ask
  const grid: GridSpec = { paper: onSide(ask.paper), ...STRIP }
  const cards = groups.flatMap(({ head, words }) => [
    { text: toHead(head), isHead: true },
    ...words.map(({ text }) => ({ text, isHead: false })),
  ])
  const texts = cards.map(({ text }) => text)
  const wish = typeof ask.size === 'number' ? ask.size : ask.size === 'small' ? LEAST_ON_WALL : USUAL
  const space = { width: STRIP.width - 20, height: STRIP.height - 8 }
  const size = toFittingSize(texts, space, letters, wish / letters.xHeight)
  if (size * letters.xHeight < Math.min(wish, LEAST_ON_WALL) - 1e-9) return toTooWide(texts, letters, 'its strip')
  const sheets = layGrid(cards, grid, ask, ({ text, isHead }, place, number): readonly Item[] => {
    const part = Math.floor(number / STRIP.rows)
    const word = putWord(text, place, size, ask, { part, at: number, role: isHead ? 'H2' : 'P' })
    return isHead ? [{ kind: 'frame', use: 'head', ...inset(place, 3) }, ...word] : word
  })
  return succeed({ sheets, counts: [count(cards.length - groups.length, 'word'), count(groups.length, 'head card')] })
}
