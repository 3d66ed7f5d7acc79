// Whether a word says the same in every sentence; every word of every story is asked about, so it is remembered.

import { findLookAlike } from '../phonics/heteronyms/part.ts'
import type { Heteronyms } from '../phonics/heteronyms/types.ts'
import { findPlaceSign } from '../verdict/index.ts'

/** False for look-alikes, and for what a sentence may show to be an abbreviation. */
export type FormTest = (text: string) => boolean

const tests = new WeakMap<Heteronyms, FormTest>()
/** A stream never ends, so what is kept has a bound. */
const MOST_KEPT = 20_000

/** One memory for all stories that share a table. */
export function toFormTest(heteronyms: Heteronyms): FormTest {
  const test = tests.get(heteronyms) ?? createFormTest(heteronyms)
  tests.set(heteronyms, test)
  return test
}

function createFormTest(heteronyms: Heteronyms): FormTest {
  const known = new Map<string, boolean>()
  return (text) => {
    let found = known.get(text)
    if (found === undefined) {
      found = findLookAlike(heteronyms, text) === undefined && findPlaceSign(text) === undefined
      if (known.size >= MOST_KEPT) known.clear()
      known.set(text, found)
    }
    return found
  }
}
