// Where to cut: hairlines outside the cards, and thin dotted lines between them for scissors.

import type { LineItem } from '../sheet.ts'

export type CutWish = 'corners' | 'lines' | 'none'

/** How long a mark is, and how far it stays off the cards. */
const MARK = 3
const GAP = 0.4

export interface CutLines {
  /** Places of the cuts, from left to right and from top to bottom. */
  readonly across: readonly number[]
  readonly down: readonly number[]
}

/** Cards touch, so one cut serves two. */
export function toCutMarks({ across, down }: CutLines, wish: CutWish): readonly LineItem[] {
  const [left = 0, right = 0] = [across[0], across.at(-1)]
  const [top = 0, bottom = 0] = [down[0], down.at(-1)]
  const draw = (use: LineItem['use'], from: LineItem['from'], to: LineItem['to']): LineItem => ({
    ...{ kind: 'line', use, from, to },
  })
  if (wish === 'none') return []
  const marks = [
    ...across.flatMap((x) => [
      draw('cut', [x, top - GAP - MARK], [x, top - GAP]),
      draw('cut', [x, bottom + GAP], [x, bottom + GAP + MARK]),
    ]),
    ...down.flatMap((y) => [
      draw('cut', [left - GAP - MARK, y], [left - GAP, y]),
      draw('cut', [right + GAP, y], [right + GAP + MARK, y]),
    ]),
  ]
  if (wish === 'corners') return marks
  return [
    ...marks,
    ...across.map((x) => draw('scissors', [x, top], [x, bottom])),
    ...down.map((y) => draw('scissors', [left, y], [right, y])),
  ]
}
