// A list has no sentence that tells how a word is meant, so a word with several spoken forms (`read`, `wind`) is listed
// only when all of them can be read.

import type { WordReadings } from '../phonics/types.ts'
import { type Knowledge, type Sequence, toStepIndex } from '../sequence/index.ts'
import { findReadableAt, isReadable, type JudgeOptions } from '../verdict/index.ts'

export const isReadableInAllForms = (readings: WordReadings, knowledge: Knowledge): boolean =>
  toForms(readings).every((form) => isReadable(form, knowledge))

/** The place of the first step at which all forms are readable; undefined where the sequence never gets there. */
export function findFirstStepOfAllForms(
  readings: WordReadings,
  sequence: Sequence,
  options: JudgeOptions = {},
): number | undefined {
  let last = -1
  for (const form of toForms(readings)) {
    const step = findReadableAt(form, sequence, options)
    if (step === undefined) return undefined
    last = Math.max(last, toStepIndex(sequence, step))
  }
  return last < 0 ? undefined : last
}

function toForms(readings: WordReadings): readonly WordReadings[] {
  if (!readings.heteronym) return [readings]
  const forms = new Set(readings.readings.map(({ form }) => form))
  return [...forms].map((form) => ({ ...readings, readings: readings.readings.filter((one) => one.form === form) }))
}
