// Where letters of a block are emphasised, in its text and in the source.

import { type TextMap, toTextOffset } from './text-map.ts'
import type { Emphasis, Range } from './types.ts'

/** An emphasis before its place in the text is known: that changes when letters are parted or left out. */
export interface FoundEmphasis extends Range {
  readonly kind: Emphasis['kind']
  /** What stands between its marks. */
  readonly inside: Range
}

/** Emphasis that holds no text (a picture, code) is left out. */
export function placeEmphasis(found: readonly FoundEmphasis[], map: TextMap): readonly Emphasis[] {
  return found
    .map(({ kind, start, end, inside }) => ({
      kind,
      start,
      end,
      textStart: toTextOffset(map, inside.start),
      textEnd: toTextOffset(map, inside.end),
    }))
    .filter(({ textStart, textEnd }) => map.text.slice(textStart, textEnd).trim() !== '')
}
