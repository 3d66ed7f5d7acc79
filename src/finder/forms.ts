// A list has no sentence that tells how a word is meant, so a word with several spoken forms (`read`, `wind`) is listed
// only when all of them can be read.

import type { WordPronunciations } from '../phonics/types.ts'
import { type Knowledge, type Sequence, toStepIndex } from '../sequence/index.ts'
import { findReadableAt, isReadable, type JudgeOptions } from '../verdict/index.ts'

export const isReadableInAllForms = (pronunciations: WordPronunciations, knowledge: Knowledge): boolean =>
  toForms(pronunciations).every((form) => isReadable(form, knowledge))

/** The place of the first step at which all forms are readable; undefined where the sequence never gets there. */
export function findFirstStepOfAllForms(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  options: JudgeOptions = {},
): number | undefined {
  let last = -1
  for (const form of toForms(pronunciations)) {
    const step = findReadableAt(form, sequence, options)
    if (step === undefined) return undefined
    last = Math.max(last, toStepIndex(sequence, step))
  }
  return last < 0 ? undefined : last
}

function toForms(pronunciations: WordPronunciations): readonly WordPronunciations[] {
  if (!pronunciations.heteronym) return [pronunciations]
  const forms = new Set(pronunciations.pronunciations.map(({ form }) => form))
  return [...forms].map((form) => ({
    ...pronunciations,
    pronunciations: pronunciations.pronunciations.filter((one) => one.form === form),
  }))
}

/** `I'm` is written so, though tables are in small letters; a child who knows `I` knows no `i`. */
export const toWritten = (word: string): string => word.replace(/^i'/, "I'")
