// Slips folded once with the word or sentence hidden inside: the child opens one, reads in silence, and does it or fetches it.

import { fail, type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, toMostSize } from '../ask.ts'
import { type GridSpec, layBacks, layGrid, type Place } from '../lay/grid.ts'
import { type Line, toLines } from '../lay/lines.ts'
import { putLines, toHeight } from '../lay/paragraph.ts'
import { LEAST, toXHeight } from '../lay/sizes.ts'
import type { MarkedText } from '../lay/words.ts'
import type { Item, ReadAs } from '../sheet.ts'

const SLIP = { columns: 2, rows: 4, width: 90, height: 60 } as const
const ROUND = 5
const SMALLER = 0.3

export function laySlips(texts: readonly MarkedText[], ask: Ask): Result<Laid> {
  const grid: GridSpec = { paper: ask.paper, ...SLIP }
  const each = SLIP.columns * SLIP.rows
  const fitted = fitAll(texts, { width: SLIP.width - 2 * ROUND, height: SLIP.height / 2 - 2 * ROUND }, ask)
  if (!fitted.ok) return fitted
  const { size, lines } = fitted.value
  const sheets = layGrid(lines, grid, ask, (own, place, number) => [
    toFold(place),
    ...putInLowerHalf(own, place, size, ask, { part: Math.floor(number / each), at: number, role: 'P' }),
  ])
  const counts = [count(texts.length, 'slip')]
  if (!ask.isNumbered) return succeed({ sheets, counts })
  const backs = layBacks(lines, grid, (_, place, number) => [toNumber(number + 1, place, ask)])
  const both = sheets.flatMap((sheet, at) => [sheet, ...backs.slice(at, at + 1)])
  return succeed({ sheets: both, counts, duplex: 'long-edge' })
}

interface Fitted {
  readonly size: number
  readonly lines: readonly (readonly Line[])[]
}

/** One size for all: twice that of a story, smaller where the longest needs it. */
function fitAll(
  texts: readonly MarkedText[],
  { width, height }: { readonly width: number; readonly height: number },
  { letters, size: wish, pageWords }: Ask,
): Result<Fitted> {
  const usual = toXHeight(pageWords) * (wish === 'large' ? 1.5 : 1.2)
  const least = Math.min(LEAST, typeof wish === 'number' ? wish : LEAST)
  const most = Math.min(toMostSize(wish, letters) * letters.xHeight, typeof wish === 'number' ? wish : usual)
  for (let xHeight = most; xHeight > least - 1e-9; xHeight -= SMALLER) {
    const size = xHeight / letters.xHeight
    const lines = texts.map((text) => toLines(text, width, size, letters))
    const fits = lines.every((own) => own !== undefined && toHeight(own.length, letters, size, 1.4) <= height)
    if (fits) return succeed({ size, lines: lines.map((own) => own ?? []) })
  }
  const longest = texts.reduce((one, other) => (other.text.length > one.text.length ? other : one))
  return fail({
    code: 'does-not-fit',
    message: `“${longest.text}” is too long for a slip, even in the smallest letters`,
    note: 'Make it shorter, or leave it out.',
  })
}

const toFold = ({ x, y, width, height }: Place): Item => ({
  kind: 'line',
  use: 'fold',
  from: [x + 2, y + height / 2],
  to: [x + width - 2, y + height / 2],
})

const NUMBER = 5

/** On the back, in the middle of the upper half: what is outside when the slip is folded. */
function toNumber(number: number, { x, y, width, height }: Place, { letters }: Ask): Item {
  const text = String(number)
  return {
    ...{ kind: 'text', text, face: 'plain', ink: 'quiet', size: NUMBER },
    x: x + (width - letters.widthOf(text, NUMBER)) / 2,
    baseline: y + height / 4 + NUMBER / 4,
  }
}

function putInLowerHalf(
  lines: readonly Line[],
  { x, y, width, height }: Place,
  size: number,
  { letters }: Ask,
  readAs: ReadAs,
): readonly Item[] {
  const free = height / 2 - toHeight(lines.length, letters, size, 1.4)
  const top = y + height / 2 + free / 2
  return putLines(lines, { x, y: top, width }, { letters, size, align: 'centre', readAs, lineSpace: 1.4 })
}
