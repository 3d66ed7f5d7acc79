// A sentence cut into loose words: cards as wide as their words, side by side, each with the sign of its strip in a corner.

import type { Place } from '../lay/grid.ts'
import { toBaseline } from '../lay/sizes.ts'
import { type MarkedText, putCentred, toWidth } from '../lay/words.ts'
import type { Letters } from '../letters.ts'
import type { Item, ReadAs } from '../sheet.ts'

export interface LooseRow {
  draw(place: Place, readAs: ReadAs): readonly Item[]
}

interface RowStyle {
  readonly width: number
  readonly height: number
  readonly size: number
  readonly letters: Letters
}

/** Air on each side of a word; a card is never narrower than the least, so that it can be held. */
const SIDE = 6
const LEAST = 22
const SIGN = 3.2

interface LooseCard {
  readonly word: MarkedText
  readonly width: number
}

/** As many rows as the words need. */
export function putRows(words: readonly MarkedText[], sign: string, style: RowStyle): readonly LooseRow[] {
  const rows: LooseCard[][] = [[]]
  let filled = 0
  for (const word of words) {
    const width = Math.max(LEAST, toWidth(word, style.size, style.letters) + 2 * SIDE)
    if (filled + width > style.width && filled > 0) {
      rows.push([])
      filled = 0
    }
    rows.at(-1)?.push({ word, width })
    filled += width
  }
  return rows.map((cards) => ({ draw: (place, readAs) => drawRow(cards, sign, place, readAs, style) }))
}

function drawRow(
  cards: readonly LooseCard[],
  sign: string,
  { x, y, height }: Place,
  readAs: ReadAs,
  { size, letters }: RowStyle,
): readonly Item[] {
  let at = x
  return cards.flatMap(({ word, width }, number): Item[] => {
    const start = at
    at += width
    return [
      ...putCentred(word, start + width / 2, toBaseline(y, height, size, letters), {
        ...{ letters, size },
        readAs: { ...readAs, at: readAs.at + number },
      }),
      { kind: 'text', text: sign, face: 'plain', ink: 'quiet', size: SIGN, x: start + 1.8, baseline: y + 3.8 },
      { kind: 'line', use: 'scissors', from: [at, y], to: [at, y + height] },
    ]
  })
}
