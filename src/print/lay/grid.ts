// Cards of one size in rows and columns, sheet after sheet, with what stands at the foot of every sheet.

import type { Letters } from '../letters.ts'
import type { Item, Sheet } from '../sheet.ts'
import { putFoot } from './foot.ts'
import { type CutWish, toCutMarks } from './marks.ts'
import type { Paper } from './paper.ts'

export interface Place {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface GridSpec {
  readonly paper: Paper
  readonly columns: number
  readonly rows: number
  readonly width: number
  readonly height: number
  /** Where a card is cut once more, from its top; `[48]` parts the tag from its picture. */
  readonly inner?: readonly number[]
}

export interface GridLook {
  readonly letters: Letters
  readonly cut: CutWish
}

/** The corner of the grid: in the middle of the paper. */
const toCorner = ({ paper, columns, rows, width, height }: GridSpec): readonly [x: number, y: number] => [
  (paper.width - columns * width) / 2,
  (paper.height - rows * height) / 2,
]

/** The place of the card of a number on its sheet; on a back side the columns are mirrored. */
export function toPlace(grid: GridSpec, number: number, isBack = false): Place {
  const { columns, width, height } = grid
  const [left, top] = toCorner(grid)
  const column = isBack ? columns - 1 - (number % columns) : number % columns
  return { x: left + column * width, y: top + Math.floor(number / columns) * height, width, height }
}

/** As many sheets as the cards need; `draw` is handed each card with its place and its number from 0. */
export function layGrid<Card>(
  cards: readonly Card[],
  grid: GridSpec,
  look: GridLook,
  draw: (card: Card, place: Place, number: number) => readonly Item[],
): readonly Sheet[] {
  return toSheets(cards, grid, (own, first) => [
    ...own.flatMap((card, at) => draw(card, toPlace(grid, at), first + at)),
    ...toCutMarks(toCuts(grid, own.length), look.cut),
    ...putFoot(grid.paper, look.letters, toCorner(grid)[0]),
  ])
}

/** The backs of the same cards. Printers move the back by some millimetres, so it has no marks of its own. */
export const layBacks = <Card>(
  cards: readonly Card[],
  grid: GridSpec,
  draw: (card: Card, place: Place, number: number) => readonly Item[],
): readonly Sheet[] =>
  toSheets(cards, grid, (own, first) => own.flatMap((card, at) => draw(card, toPlace(grid, at, true), first + at)))

function toSheets<Card>(
  cards: readonly Card[],
  { paper, columns, rows }: GridSpec,
  fill: (own: readonly Card[], first: number) => readonly Item[],
): readonly Sheet[] {
  const sheets: Sheet[] = []
  const each = columns * rows
  for (let first = 0; first < cards.length; first += each)
    sheets.push({
      width: paper.width,
      height: paper.height,
      items: fill(cards.slice(first, first + each), first),
    })
  return sheets
}

/** Cuts of the rows that are used; a last row that is not full is cut all the same. */
function toCuts(grid: GridSpec, used: number): { across: number[]; down: number[] } {
  const { columns, width, height, inner = [] } = grid
  const [left, top] = toCorner(grid)
  const rows = Math.ceil(used / columns)
  const wide = Math.min(columns, used)
  const across = Array.from({ length: wide + 1 }, (_, at) => left + at * width)
  const down = Array.from({ length: rows }, (_, at) => top + at * height).flatMap((y) => [
    y,
    ...inner.map((d) => y + d),
  ])
  return { across, down: [...down, top + rows * height] }
}
