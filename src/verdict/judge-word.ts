// Judges the words of a story, each different word once, and finds when it becomes readable only when asked.

import type { WordReadings } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { findReadableAt, type JudgeOptions, judgeInSequence } from './look-ahead.ts'
import type { JudgedWord, Verdict } from './types.ts'

/**
 * Judges a word by its readings. `form` is the spoken form that the sentence asks for, as in `Reading.form`; without
 * it, a word with several spoken forms is readable where one of them is, and `unsettled` where they are judged
 * differently.
 */
export type WordJudge = (readings: WordReadings, form?: string) => JudgedWord

/**
 * A judge for one sequence, step and reader, with its own memory.
 * @throws RangeError where the sequence has no such step
 */
export function createWordJudge(sequence: Sequence, stepId: string, options: JudgeOptions = {}): WordJudge {
  // An engine hands out the same readings for the same word, so they stand for it: no key has to be put together.
  const judged = new Map<string | undefined, Map<WordReadings, JudgedWord>>()
  return (readings, form) => {
    let ofForm = judged.get(form)
    if (ofForm === undefined) judged.set(form, (ofForm = new Map()))
    let word = ofForm.get(readings)
    if (word === undefined) ofForm.set(readings, (word = judgeWord(readings, form, sequence, stepId, options)))
    return word
  }
}

function judgeWord(
  readings: WordReadings,
  form: string | undefined,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions,
): JudgedWord {
  const meant = keepForm(readings, form)
  const verdict = judgeInSequence(meant, sequence, stepId, options)
  let readableAt: string | null | undefined
  return {
    readings,
    verdict,
    get readableAt() {
      readableAt ??= findReadableAt(meant, sequence, options) ?? null
      return readableAt
    },
    unsettled: form === undefined && isUnsettled(readings, verdict, sequence, stepId, options),
  }
}

/** The readings of one spoken form; all of them where the form is not told. */
export function keepForm(readings: WordReadings, form: string | undefined): WordReadings {
  if (form === undefined) return readings
  const meant = readings.readings.filter((reading) => reading.form === form)
  return meant.length === 0 ? readings : { ...readings, readings: meant }
}

// A sight word or a name is read whole, whatever it means, so only a sounded-out heteronym can be unsettled.
function isUnsettled(
  readings: WordReadings,
  verdict: Verdict,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions,
): boolean {
  if (verdict.kind !== 'decodable') return false
  return hasMixedForms(readings, (meant) => judgeInSequence(meant, sequence, stepId, options).readable)
}

/** Whether `judge` tells the spoken forms of a word apart, so that the sentence must settle which is meant. */
export function hasMixedForms(readings: WordReadings, judge: (meant: WordReadings) => unknown): boolean {
  if (!readings.heteronym) return false
  const forms = new Set(readings.readings.map((reading) => reading.form))
  return new Set([...forms].map((form) => judge(keepForm(readings, form)))).size > 1
}
