// Judges the words of a story, each different word once, and finds when it becomes readable only when asked.

import type { WordPronunciations } from '../phonics/types.ts'
import { toStepIndex } from '../sequence/knowledge.ts'
import type { Sequence } from '../sequence/types.ts'
import { ABBREVIATED } from './abbreviations.ts'
import { findReadableAt, type JudgeOptions, judgeAhead, judgeInSequence } from './look-ahead.ts'
import type { JudgedForm, JudgedWord, MeantWord, Verdict } from './types.ts'

/**
 * Judges a word by its pronunciations. `form` is the spoken form that the sentence asks for, as in `Pronunciation.form`; without
 * it, a word with several spoken forms is readable where one of them is, and `unsettled` until all of them are.
 */
export type WordJudge = (pronunciations: WordPronunciations, form?: string) => JudgedWord

/**
 * A judge for one sequence, step and reader, with its own memory.
 * @throws RangeError where the sequence has no such step
 */
export function createWordJudge(sequence: Sequence, stepId: string, options: JudgeOptions = {}): WordJudge {
  // An engine hands out the same pronunciations for the same word, so they stand for it: no key has to be put together.
  const judged = new Map<string | undefined, Map<WordPronunciations, JudgedWord>>()
  return (pronunciations, form) => {
    let ofForm = judged.get(form)
    if (ofForm === undefined) judged.set(form, (ofForm = new Map()))
    let word = ofForm.get(pronunciations)
    if (word === undefined)
      ofForm.set(pronunciations, (word = judgeWord(pronunciations, form, sequence, stepId, options)))
    return word
  }
}

function judgeWord(
  pronunciations: WordPronunciations,
  form: string | undefined,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions,
): JudgedWord {
  const meant = keepForm(pronunciations, form)
  const { verdict, ...found } = judgeAhead(meant, sequence, stepId, options)
  const steps = form === undefined ? findFormSteps(pronunciations, verdict, sequence, options) : []
  let readableAt = 'readableAt' in found ? (found.readableAt ?? null) : undefined
  let forms: readonly JudgedForm[] | undefined
  // Which form is meant is not known, so the word waits for the last of them.
  if (steps.length > 0) readableAt = findLast(steps, sequence)
  return {
    pronunciations,
    verdict,
    get readableAt() {
      if (readableAt === undefined) readableAt = findReadableAt(meant, sequence, options) ?? null
      return readableAt
    },
    unsettled: steps.some((step) => !isReached(step, sequence, stepId)),
    form,
    get forms() {
      return (forms ??= judgeForms(pronunciations, sequence, stepId, options))
    },
  }
}

/** Forms that have the same faults and are read at the same step are alike to the child, whatever they mean. */
function judgeForms(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions,
): readonly JudgedForm[] {
  if (!pronunciations.heteronym) return []
  const outcomes = new Set<string>()
  const byForm = new Map(pronunciations.pronunciations.map((one) => [one.form, one] as const))
  const judged = [...byForm].flatMap(([form, { meaning }]): readonly JudgedForm[] => {
    if (form === undefined || meaning === undefined) return []
    const meant = keepForm(pronunciations, form)
    const { readable, reasons } = judgeInSequence(meant, sequence, stepId, options)
    const readableAt = findReadableAt(meant, sequence, options) ?? null
    outcomes.add(JSON.stringify([readableAt, reasons.map(({ code, letters, key }) => [code, letters, key])]))
    return [{ form, meaning, readable, readableAt }]
  })
  return outcomes.size > 1 ? judged : []
}

type FormStep = string | undefined

/** When each spoken form of a word is first readable; none where they do not differ in that. */
function findFormSteps(
  pronunciations: WordPronunciations,
  verdict: Verdict,
  sequence: Sequence,
  options: JudgeOptions,
): readonly FormStep[] {
  // A sight word or a name is read whole, whatever it means.
  if (!pronunciations.heteronym || verdict.kind === 'sight' || verdict.kind === 'name') return []
  const forms = new Set(pronunciations.pronunciations.map((pronunciation) => pronunciation.form))
  const steps = [...forms].map((form) => findReadableAt(keepForm(pronunciations, form), sequence, options))
  return new Set(steps).size > 1 ? steps : []
}

const isReached = (step: FormStep, sequence: Sequence, stepId: string): boolean =>
  step !== undefined && toStepIndex(sequence, step) <= toStepIndex(sequence, stepId)

const findLast = (steps: readonly FormStep[], sequence: Sequence): string | null =>
  steps.includes(undefined) ? null : (sequence.steps.findLast(({ id }) => steps.includes(id))?.id ?? null)

/** The pronunciations of one spoken form; all of them where the form is not told. */
export function keepForm(pronunciations: WordPronunciations, form: string | undefined): MeantWord {
  if (form === undefined) return pronunciations
  if (form === ABBREVIATED) return { ...pronunciations, isAbbreviated: true }
  const meant = pronunciations.pronunciations.filter((pronunciation) => pronunciation.form === form)
  return meant.length === 0 ? pronunciations : { ...pronunciations, pronunciations: meant }
}

/** Whether `judge` tells the spoken forms of a word apart, so that the sentence must settle which is meant. */
export function hasMixedForms(
  pronunciations: WordPronunciations,
  judge: (meant: WordPronunciations) => unknown,
): boolean {
  if (!pronunciations.heteronym) return false
  const forms = new Set(pronunciations.pronunciations.map((pronunciation) => pronunciation.form))
  return new Set([...forms].map((form) => judge(keepForm(pronunciations, form)))).size > 1
}
