// Which page stands where on which sheet, so that the folded sheets open in order.

export type Fold = 'staple' | 'one-sheet' | 'none'

/** A page's place on a side: from the left and from the top, in pages; `isTurned` stands it on its head. */
export interface Placed {
  /** From 0; undefined for an empty page. */
  readonly page: number | undefined
  readonly column: number
  readonly row: number
  readonly isTurned: boolean
}

export interface Imposition {
  readonly columns: number
  readonly rows: number
  /** Side after side: of a sheet printed on both sides, the front and then the back. */
  readonly sides: readonly (readonly Placed[])[]
  /** How many pages there are with the empty ones. */
  readonly pages: number
}

/** A stapled booklet: padded to a multiple of four with empty pages before the last, so that the last is the back cover. */
export function imposeStapled(count: number): Imposition {
  const pages = Math.ceil(count / 4) * 4
  const toPage = (at: number): number | undefined => (at === pages - 1 ? count - 1 : at < count - 1 ? at : undefined)
  const toSide = (left: number, right: number): Placed[] =>
    [left, right].map((at, column) => ({ page: toPage(at), column, row: 0, isTurned: false }))
  const sides = Array.from({ length: pages / 4 }, (_, sheet) => [
    toSide(pages - 1 - 2 * sheet, 2 * sheet),
    toSide(2 * sheet + 1, pages - 2 - 2 * sheet),
  ]).flat()
  return { columns: 2, rows: 1, sides, pages }
}

/** How many pages one sheet folds into. */
export const ONE_SHEET = 8

/**
 * Eight pages from one side of one sheet: the upper row stands on its head. Cut along the middle between the two inner
 * columns, fold lengthwise, push the ends together, and fold round.
 *
 *     (5) (4) (3) (2)
 *      6   7   8   1
 */
export function imposeOneSheet(count: number): Imposition {
  const toPage = (number: number): number | undefined =>
    number === ONE_SHEET ? count - 1 : number < count ? number - 1 : undefined
  const upper = [5, 4, 3, 2].map((number, column) => ({ page: toPage(number), column, row: 0, isTurned: true }))
  const lower = [6, 7, 8, 1].map((number, column) => ({ page: toPage(number), column, row: 1, isTurned: false }))
  return { columns: 4, rows: 2, sides: [[...upper, ...lower]], pages: ONE_SHEET }
}

/** Single pages in the order of reading. */
export const imposeSingle = (count: number): Imposition => ({
  columns: 1,
  rows: 1,
  sides: Array.from({ length: count }, (_, page) => [{ page, column: 0, row: 0, isTurned: false }]),
  pages: count,
})
