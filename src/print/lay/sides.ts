// Which sides are printed, and how the printer turns the paper.

import type { Laid } from '../ask.ts'
import type { Sheet } from '../sheet.ts'

export interface SideWish {
  /** `fronts`, then `backs` on the same paper: for a printer that prints one side. */
  readonly sides: 'both' | 'fronts' | 'backs'
  readonly turn: 'short-edge' | 'long-edge' | undefined
}

/** Sheets printed on one side only stay as they are; asked for their backs, they have none. */
export function toSides(laid: Laid, { sides, turn }: SideWish): Laid {
  const { sheets, duplex, ...rest } = laid
  if (duplex === undefined) return { ...laid, sheets: sides === 'backs' ? [] : sheets }
  // Turned at the other edge, the back side comes out on its head.
  const isTurned = turn !== undefined && turn !== duplex
  const all = sheets.map((sheet, at) => (isTurned && at % 2 === 1 ? turnRound(sheet) : sheet))
  if (sides === 'both') return { ...rest, sheets: all, duplex: turn ?? duplex }
  return { ...rest, sheets: all.filter((_, at) => at % 2 === (sides === 'fronts' ? 0 : 1)) }
}

const turnRound = ({ width, height, items }: Sheet): Sheet => ({
  width,
  height,
  items: [{ kind: 'group', x: width, y: height, turn: 180, items }],
})
