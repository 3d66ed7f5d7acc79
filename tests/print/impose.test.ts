// Folding, simulated: sheets are printed, cut and folded as paper is, and the book is opened page by page.

import { expect, it } from 'vitest'
import { type Imposition, imposeOneSheet, imposeSingle, imposeStapled } from '../../src/print/lay/impose.ts'

/** A leaf of paper: what stands on its front and on its back. */
type Leaf = readonly [front: number | undefined, back: number | undefined]

/**
 * Sheets printed on both sides and turned at the short edge: the left half of a front lies on the right half of its back.
 * Laid on one another, the first outermost, and folded, the right halves are the first leaves and the left halves the last.
 */
function foldStapled({ sides }: Imposition): (number | undefined)[] {
  const sheets: [Leaf, Leaf][] = []
  for (let at = 0; at < sides.length; at += 2) {
    const at0 = (side: number, column: number) => sides[side]?.find((placed) => placed.column === column)?.page
    sheets.push([
      [at0(at, 0), at0(at + 1, 1)],
      [at0(at, 1), at0(at + 1, 0)],
    ])
  }
  const first = sheets.map(([, right]) => right)
  // A left half is read from its back: folded, its back lies inside.
  const last = sheets.map(([left]): Leaf => [left[1], left[0]]).reverse()
  return [...first, ...last].flat()
}

it.each(Array.from({ length: 64 }, (_, at) => at + 2))('a stapled book of %i pages opens in order', (count) => {
  const { sides, pages } = imposeStapled(count)
  expect(pages % 4).toBe(0)
  const opened = foldStapled(imposeStapled(count))
  expect(opened).toHaveLength(pages)
  expect(opened.filter((page) => page !== undefined)).toEqual(Array.from({ length: count }, (_, page) => page))
  // The page for the grown-up is the outside of the last leaf, and the cover the outside of the first.
  expect([opened[0], opened.at(-1)]).toEqual([0, count - 1])
  expect(sides.flat().every(({ isTurned }) => !isTurned)).toBe(true)
})

/**
 * One sheet of four columns and two rows, printed on one side, folded lengthwise with the print outside: each column is
 * then a double leaf, lower row on one face and upper row on the other. The cut lets the two inner columns part: pushed
 * together, the outer columns stay leaves of their own two faces, and the inner ones become a leaf of the two lower faces
 * and a leaf of the two upper faces. The four leaves stand like a cross and are folded round it, in this ring.
 */
function foldOneSheet({ sides }: Imposition): (number | undefined)[] {
  const at = (row: number, column: number) => sides[0]?.find((one) => one.row === row && one.column === column)?.page
  const ring = [
    [at(1, 3), at(0, 3)],
    [at(0, 2), at(0, 1)],
    [at(0, 0), at(1, 0)],
    [at(1, 1), at(1, 2)],
  ]
  return ring.flat()
}

it.each([2, 3, 4, 5, 6, 7, 8])('one sheet with %i pages opens in order, upper row on its head', (count) => {
  const imposition = imposeOneSheet(count)
  const opened = foldOneSheet(imposition)
  expect(opened.filter((page) => page !== undefined)).toEqual(Array.from({ length: count }, (_, page) => page))
  expect(opened.at(-1)).toBe(count - 1)
  for (const { row, isTurned } of imposition.sides.flat()) expect(isTurned).toBe(row === 0)
})

it('single pages come in order', () => {
  expect(imposeSingle(5).sides.map(([placed]) => placed?.page)).toEqual([0, 1, 2, 3, 4])
})
