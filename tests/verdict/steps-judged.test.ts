// The first step of the series at which a word can be read, judged by hand before the program was asked (data/steps-judged.tsv says how it was drawn).

import { expect, it } from 'vitest'
import { findOtherSteps, readJudgedSteps } from '../../scripts/accuracy/judged-steps.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

it('is the one that the program tells, but for three of 150 words', () => {
  const judged = readJudgedSteps()
  expect(judged).toHaveLength(150)
  // The program sees no i of its own in ap-pre-ci-ate's ci, and takes the t of `mutual` for that of `picture`.
  expect(findOtherSteps(judged, testPhonics('general-american'))).toEqual(['appreciate', 'centuries', 'mutual'])
})
