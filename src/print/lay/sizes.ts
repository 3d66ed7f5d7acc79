// How large letters are: by what a step allows on a page, or as asked; and the largest size at which words fit their cards.

import type { Letters } from '../letters.ts'
import { BAR, type MarkedText, toWidth } from './words.ts'

/** Heights of the small x in millimetres, so that fonts compare. Own choice: nobody has published such figures. */
const SIZES = [
  { upTo: 14, xHeight: 6.3 },
  { upTo: 40, xHeight: 5.3 },
  { upTo: Infinity, xHeight: 4.6 },
] as const

/** Where a step sets no limit to the words of a page; nothing for a child is printed smaller. */
export const LEAST = 3.9

/** The height of the small x by the words that a step allows on a page. */
export const toXHeight = (pageWords: number | undefined): number =>
  pageWords === undefined ? LEAST : (SIZES.find(({ upTo }) => pageWords <= upTo)?.xHeight ?? LEAST)

/** How much of a line's height its letters take, in sizes, with or without a bar below. */
const toInkHeight = ({ ascent, descent }: Letters, hasBar: boolean): number =>
  ascent + (hasBar ? Math.max(descent, BAR + 0.03) : descent)

export interface Space {
  readonly width: number
  readonly height: number
}

/** The largest size at which each text fits the space on one line, up to a size. */
export function toFittingSize(texts: readonly MarkedText[], space: Space, letters: Letters, most: number): number {
  const hasBar = texts.some(({ marked }) => marked.length > 0)
  const widest = Math.max(...texts.map((text) => toWidth(text, 1, letters)), 0.01)
  return Math.min(most, space.width / widest, space.height / toInkHeight(letters, hasBar))
}

/** The baseline at which the small letters of a line stand in the middle of a height. */
export function toBaseline(y: number, height: number, size: number, { ascent, descent }: Letters): number {
  const ink = (ascent + descent) * size
  return y + (height - ink) / 2 + ascent * size
}
