// The first step of the series at which a word can be read, judged by hand before the program was asked (data/steps-judged.tsv says how it was drawn).

import { expect, it } from 'vitest'
import { findOtherSteps, readJudgedSteps } from '../../scripts/accuracy/judged-steps.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

it('is the one that the program tells, but for two of 150 words', () => {
  const judged = readJudgedSteps()
  expect(judged).toHaveLength(150)
  // The program takes the t of `mutual` and `centuries` for that of `picture`, as it does in `actual` and `natural`.
  expect(findOtherSteps(judged, testPhonics('general-american'))).toEqual(['centuries', 'mutual'])
})
