// Puts words on a sheet: each with its marked letters in bold over a bar.

import type { Letters } from '../letters.ts'
import type { Face, Ink, Item, ReadAs } from '../sheet.ts'

/** Ranges of a text, in order. */
export type Ranges = readonly (readonly [from: number, to: number])[]

export interface MarkedText {
  readonly text: string
  /** Letters that are practised: bold, over a bar. */
  readonly marked: Ranges
  /** Words that the writer stresses: bold alone. */
  readonly bold?: Ranges
}

export const unmarked = (text: string): MarkedText => ({ text, marked: [] })

/** Bold all through, without a bar. */
export const toHead = (text: string): MarkedText => ({ text, marked: [], bold: [[0, text.length]] })

export interface Run {
  readonly text: string
  readonly face: Face
  readonly hasBar: boolean
}

/** The text cut into stretches that look the same all through. */
function toRuns({ text, marked, bold = [] }: MarkedText): readonly Run[] {
  const cuts = new Set([0, text.length, ...marked.flat(), ...bold.flat()])
  const places = [...cuts].filter((at) => at >= 0 && at <= text.length).sort((one, other) => one - other)
  const isIn = (ranges: Ranges, at: number): boolean => ranges.some(([from, to]) => at >= from && at < to)
  return places.slice(0, -1).map((from, index): Run => {
    const hasBar = isIn(marked, from)
    const face = hasBar || isIn(bold, from) ? 'bold' : 'plain'
    return { text: text.slice(from, places[index + 1]), face, hasBar }
  })
}

export const toWidth = (marked: MarkedText, size: number, letters: Letters): number =>
  toRuns(marked).reduce((sum, { text, face }) => sum + letters.widthOf(text, size, face), 0)

export interface WordStyle {
  readonly letters: Letters
  /** Millimetres. */
  readonly size: number
  readonly ink?: Ink
  readonly readAs?: ReadAs
}

/** How far below the baseline the bar under marked letters lies, in sizes: under the deepest letters, so that it crosses none. */
export const BAR = 0.3

/** The items of a text from x on. */
export function putText(marked: MarkedText, x: number, baseline: number, style: WordStyle): readonly Item[] {
  const { letters, size, ink = 'black', readAs } = style
  let at = x
  return toRuns(marked).flatMap(({ text, face, hasBar }): Item[] => {
    const width = letters.widthOf(text, size, face)
    const start = at
    at += width
    const run: Item = { kind: 'text', text, face, ink, size, x: start, baseline, ...(readAs && { readAs }) }
    const y = baseline + BAR * size
    const inset = 0.04 * size
    return !hasBar
      ? [run]
      : [run, { kind: 'line', use: 'bar', from: [start + inset, y], to: [start + width - inset, y] }]
  })
}

/** The items of a text whose middle is at x. */
export const putCentred = (marked: MarkedText, x: number, baseline: number, style: WordStyle): readonly Item[] =>
  putText(marked, x - toWidth(marked, style.size, style.letters) / 2, baseline, style)
