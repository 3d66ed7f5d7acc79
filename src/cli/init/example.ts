// At which step of a sequence a child can read the example story.

import { EXAMPLE_WORDS, type Example } from '../../init/story-folder.ts'
import type { Phonics } from '../../phonics/types.ts'
import { toStepIndex } from '../../sequence/knowledge.ts'
import type { Sequence } from '../../sequence/types.ts'
import { findReadableAt } from '../../verdict/index.ts'

/** The first step at which the whole example is readable; where there is none, the last, with the words that are told. */
export function findExample(sequence: Sequence, phonics: Phonics): Example {
  const found = EXAMPLE_WORDS.map((word) => ({ word, step: findReadableAt(phonics.read(word), sequence) }))
  const sightWords = found.filter(({ step }) => step === undefined).map(({ word }) => word)
  const last = sequence.steps.at(-1)?.id ?? ''
  if (sightWords.length > 0) return { step: last, sightWords }
  const steps = found.map(({ step }) => toStepIndex(sequence, step ?? last))
  return { step: sequence.steps[Math.max(...steps)]?.id ?? last, sightWords }
}
