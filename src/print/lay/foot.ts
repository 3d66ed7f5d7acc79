// What every sheet says at its foot to whoever prints it: no scaling, and a line to measure by.

import type { Letters } from '../letters.ts'
import type { Item } from '../sheet.ts'
import { EDGE, type Paper } from './paper.ts'

/** Millimetres. */
const SIZE = 2.6
const RULER = 50

const HINT = 'Print at 100 %: this line is 50 mm long.'

/** @param left where the cards begin; the foot keeps to the width of the first of them, between its cut marks */
export function putFoot({ height }: Pick<Paper, 'height'>, letters: Letters, left: number): readonly Item[] {
  const width = letters.widthOf(HINT, 1)
  const size = Math.min(SIZE, (RULER - 4) / width)
  const y = height - EDGE - 0.7
  const x = left + 3
  const tick = (at: number): Item => ({ kind: 'line', use: 'measure', from: [at, y - 1.4], to: [at, y] })
  return [
    { kind: 'line', use: 'measure', from: [x, y], to: [x + RULER, y] },
    tick(x),
    tick(x + RULER),
    {
      ...{ kind: 'text', face: 'plain', ink: 'quiet', size },
      text: HINT,
      x: x + (RULER - width * size) / 2,
      baseline: y - 0.9,
    },
  ]
}

/** Free of cards: the foot and a little air above it. */
export const FOOT = EDGE + 5
