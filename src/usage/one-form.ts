// Whether a word says the same in every sentence; every word of every story is asked about, so it is remembered.

import { findLookAlike } from '../phonics/heteronyms/part.ts'
import type { Heteronyms } from '../phonics/heteronyms/types.ts'
import { remember } from '../phonics/remember.ts'
import { findPlaceSign } from '../verdict/index.ts'

/** False for look-alikes, and for what a sentence may show to be an abbreviation. */
type FormTest = (text: string) => boolean

const tests = new WeakMap<Heteronyms, FormTest>()

/** One memory for all stories that share a table. */
export function toFormTest(heteronyms: Heteronyms): FormTest {
  const test = tests.get(heteronyms) ?? remember((text) => hasOneForm(heteronyms, text))
  tests.set(heteronyms, test)
  return test
}

const hasOneForm = (heteronyms: Heteronyms, text: string): boolean =>
  findLookAlike(heteronyms, text) === undefined && findPlaceSign(text) === undefined
