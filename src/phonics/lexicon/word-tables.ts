// What the lexicon file says of words by their place: where their parts meet, and which make compounds.

import { findLastIndex } from '../../sorted.ts'
import { readU24 } from '../u24.ts'
import { SEAM } from './format.ts'

/** The seams of the word at a place. */
export function findSeams(bytes: Uint8Array, place: number): readonly number[] | undefined {
  const at = findLastIndex(bytes.length / SEAM, (record) => readU24(bytes, record * SEAM) <= place) * SEAM
  if (at < 0 || readU24(bytes, at) !== place) return undefined
  const mask = readU24(bytes, at + 3)
  return Array.from({ length: 24 }, (_, seam) => seam).filter((seam) => (mask >> seam) & 1)
}

export function readParts(bytes: Uint8Array): ReadonlyMap<number, number> {
  const parts = new Map<number, number>()
  let place = 0
  for (let at = 0; at < bytes.length; at++) {
    place += bytes[at] ?? 0
    if (bytes[at] !== 255) parts.set(place, bytes[++at] ?? 0)
  }
  return parts
}
