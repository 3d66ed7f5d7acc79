// Puts words on a sheet: each with its marked letters in bold over a bar.

import type { Letters } from '../letters.ts'
import type { Face, Ink, Item, ReadAs } from '../sheet.ts'

/** A stretch of text of which some letters are marked; `marked` holds ranges of it, in order. */
export interface MarkedText {
  readonly text: string
  readonly marked: readonly (readonly [from: number, to: number])[]
}

export const unmarked = (text: string): MarkedText => ({ text, marked: [] })

export interface Run {
  readonly text: string
  readonly face: Face
}

/** The text cut into stretches of one face. */
export function toRuns({ text, marked }: MarkedText): readonly Run[] {
  const runs: Run[] = []
  let at = 0
  const add = (to: number, face: Face): void => {
    if (to > at) runs.push({ text: text.slice(at, to), face })
    at = Math.max(at, to)
  }
  for (const [from, to] of marked) {
    add(from, 'plain')
    add(to, 'bold')
  }
  add(text.length, 'plain')
  return runs
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
  return toRuns(marked).flatMap(({ text, face }): Item[] => {
    const width = letters.widthOf(text, size, face)
    const start = at
    at += width
    const run: Item = { kind: 'text', text, face, ink, size, x: start, baseline, ...(readAs && { readAs }) }
    const y = baseline + BAR * size
    const inset = 0.04 * size
    return face === 'plain'
      ? [run]
      : [run, { kind: 'line', use: 'bar', from: [start + inset, y], to: [start + width - inset, y] }]
  })
}

/** The items of a text whose middle is at x. */
export const putCentred = (marked: MarkedText, x: number, baseline: number, style: WordStyle): readonly Item[] =>
  putText(marked, x - toWidth(marked, style.size, style.letters) / 2, baseline, style)
