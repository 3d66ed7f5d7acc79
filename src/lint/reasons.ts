// Every code that a message may carry in its field `reason`, for other programs: schemas/ list them, and a test compares.

import { REASON_CODES } from '../verdict/faults.ts'
import type { ReasonCode } from '../verdict/types.ts'

/** What is wrong with a word beside what the verdict says of it. */
const OTHER_FAULTS = [
  'all-capitals',
  'capital',
  'foreign',
  'guessed',
  'numeral',
  'unlisted-name',
  'unsettled-heteronym',
] as const

/** All that can be wrong with one word. A word may have several faults; the run tells the teacher the first that a rule claims. */
export type FaultCode = ReasonCode | (typeof OTHER_FAULTS)[number]

/** What rules find that is no fault of one word: letters, marks, counts, lists of the front matter. */
const RULE_REASONS = [
  'look-alike-letters',
  'mark',
  'new-words',
  'other-spelling',
  'page-sentences',
  'page-words',
  'practised-words',
  'sentence-words',
  'share',
  'sight-word-returns',
  'slip',
  'unused-name',
] as const

export type MessageReason = FaultCode | (typeof RULE_REASONS)[number]

export const MESSAGE_REASONS: readonly MessageReason[] = [...REASON_CODES, ...OTHER_FAULTS, ...RULE_REASONS]
