// Why a spoken form of a word is readable at no step of a sequence, where another form is.

import type { WordPronunciations } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { judgeInSequence, keepForm, type Reason } from '../verdict/index.ts'

/**
 * The reasons for each pronunciation, in order; none for those whose form some step makes readable.
 * @param readableAt the step of each pronunciation's form, null for none
 */
export function findFormReasons(
  pronunciations: WordPronunciations,
  readableAt: readonly (string | null)[],
  sequence: Sequence,
): readonly (readonly Reason[])[] {
  const last = sequence.steps.at(-1)?.id
  return pronunciations.pronunciations.map(({ form }, at) =>
    last !== undefined && readableAt[at] === null
      ? judgeInSequence(keepForm(pronunciations, form), sequence, last).reasons
      : [],
  )
}
