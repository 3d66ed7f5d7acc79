// Whether a word says the same in every sentence; every word of every story is asked about, so it is remembered.

import { findLookAlike } from '../phonics/heteronyms/part.ts'
import type { Heteronyms } from '../phonics/heteronyms/types.ts'
import { findPlaceSign } from '../verdict/index.ts'

const known = new WeakMap<Heteronyms, Map<string, boolean>>()
/** A stream never ends, so what is kept has a bound. */
const MOST_KEPT = 20_000

/** False for look-alikes, and for what a sentence may show to be an abbreviation. */
export function hasOneForm(heteronyms: Heteronyms, text: string): boolean {
  let ofTable = known.get(heteronyms)
  if (ofTable === undefined) known.set(heteronyms, (ofTable = new Map()))
  let found = ofTable.get(text)
  if (found === undefined) {
    found = findLookAlike(heteronyms, text) === undefined && findPlaceSign(text) === undefined
    if (ofTable.size >= MOST_KEPT) ofTable.clear()
    ofTable.set(text, found)
  }
  return found
}
