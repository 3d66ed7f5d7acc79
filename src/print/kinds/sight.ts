// Cards for words that are learnt by heart: large, one word each.

import { type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, toTooWide, type WordPiece } from '../ask.ts'
import { type GridSpec, layGrid } from '../lay/grid.ts'
import { putWord, toSharedSize } from './cards.ts'

const CARD = { columns: 2, rows: 4, width: 90, height: 62 } as const
const SIDE = 8
/** The height of the small x: to be read from the other side of a rug, and no larger, so that short words are not giants. */
const USUAL = 12

export function laySight(words: readonly WordPiece[], ask: Ask): Result<Laid> {
  const grid: GridSpec = { paper: ask.paper, ...CARD }
  const texts = words.map(({ text }) => text)
  const wish = ask.size === 'usual' ? USUAL : ask.size === 'large' ? 16 : ask.size
  const space = { width: CARD.width - 2 * SIDE, height: CARD.height - 2 * SIDE }
  const size = toSharedSize(texts, space, { letters: ask.letters, size: wish })
  if (size === undefined) return toTooWide(texts, ask.letters, 'its card')
  const each = CARD.columns * CARD.rows
  const sheets = layGrid(texts, grid, ask, (text, place, number) =>
    putWord(text, place, size, ask, { part: Math.floor(number / each), at: number, role: 'P' }),
  )
  return succeed({ sheets, counts: [count(words.length, 'card')] })
}
