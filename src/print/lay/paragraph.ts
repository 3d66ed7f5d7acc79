// Puts the lines of a text into a space, from its left edge or around its middle; never justified.

import type { Letters } from '../letters.ts'
import type { Item, ReadAs } from '../sheet.ts'
import type { Line } from './lines.ts'
import type { Space } from './sizes.ts'
import { putText, toWidth } from './words.ts'

/** From baseline to baseline, in sizes. */
const LINE_SPACE = 1.5

export interface ParagraphStyle {
  readonly letters: Letters
  readonly size: number
  readonly align: 'left' | 'centre'
  readonly ink?: 'black' | 'quiet'
  readonly readAs?: ReadAs
  readonly lineSpace?: number
}

/** How high some lines are, from the top of the tallest letter to the foot of the deepest. */
export const toHeight = (lines: number, { ascent, descent }: Letters, size: number, lineSpace = LINE_SPACE): number =>
  lines === 0 ? 0 : (ascent + descent + (lines - 1) * lineSpace) * size

/** @param y the top of the tallest letters of the first line */
export function putLines(
  lines: readonly Line[],
  { x, y, width }: { readonly x: number; readonly y: number } & Pick<Space, 'width'>,
  { letters, size, align, readAs, ink = 'black', lineSpace = LINE_SPACE }: ParagraphStyle,
): readonly Item[] {
  return lines.flatMap(({ text }, row) => {
    const start = align === 'left' ? x : x + (width - toWidth(text, size, letters)) / 2
    const baseline = y + (letters.ascent + row * lineSpace) * size
    // A space that is not seen parts the lines where they are read aloud or copied.
    const isEnd = row === lines.length - 1
    const whole = isEnd ? text : { ...text, text: `${text.text} ` }
    return putText(whole, start, baseline, { letters, size, ink, ...(readAs && { readAs }) })
  })
}
