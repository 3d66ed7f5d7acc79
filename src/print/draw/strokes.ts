// How each kind of line and frame looks, on paper and on the screen alike.

import type { FrameItem, Ink, LineUse } from '../sheet.ts'

export interface Stroke {
  /** Millimetres. */
  readonly width: number
  readonly colour: string
  /** Lengths of dash and gap in millimetres; none for a whole line. */
  readonly dash?: readonly [dash: number, gap: number]
  readonly round?: boolean
}

/** A third of a point, the thinnest that home printers print for certain (own choice). */
const HAIR = 0.106

export const LINES: Readonly<Record<LineUse, Stroke>> = {
  bar: { width: 0.5, colour: '#000000', round: true },
  cut: { width: HAIR, colour: '#000000' },
  fold: { width: 0.15, colour: '#808080', dash: [2.5, 1.5] },
  measure: { width: 0.2, colour: '#595959' },
  rule: { width: 0.2, colour: '#8c8c8c' },
  scissors: { width: 0.15, colour: '#737373', dash: [0.3, 1] },
}

export const FRAMES: Readonly<Record<FrameItem['use'], Stroke & { readonly corner: number }>> = {
  empty: { width: 0.25, colour: '#8c8c8c', dash: [1.5, 1.2], corner: 3 },
  head: { width: 1.2, colour: '#000000', corner: 4 },
}

export const INKS: Readonly<Record<Ink, string>> = { black: '#000000', quiet: '#595959' }

/** A bold letter of a font without a bold file: its outline is drawn this thick, in shares of its size. */
export const THICKER = 0.035
