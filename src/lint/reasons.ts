// Every code that a message may carry in its field `reason`, for other programs: schemas/ list them, and a test compares.

import { REASON_CODES } from '../verdict/faults.ts'
import type { ReasonCode } from '../verdict/types.ts'

/** All that can be wrong with one word. A word may have several faults; the run tells the teacher the first that a rule claims. */
export type FaultCode =
  | ReasonCode
  | 'all-capitals'
  | 'capital'
  | 'foreign'
  | 'guessed'
  | 'numeral'
  | 'unlisted-name'
  | 'unsettled-heteronym'

/** What rules find that is no fault of one word, each with the rule that says it. */
const RULE_REASONS = {
  'look-alike-letters': 'no-look-alike-letters',
  mark: 'no-untaught-mark',
  'new-words': 'max-new-words',
  'page-sentences': 'max-page-sentences',
  'page-words': 'max-page-words',
  'practised-words': 'min-practised-words',
  'sentence-words': 'max-sentence-words',
  share: 'min-readable-share',
  'sight-word-returns': 'min-sight-word-returns',
  slip: 'no-unknown-word',
  'unused-name': 'no-unused-name',
} as const

/** What is wrong with a word beside what the verdict says of it. */
const OTHER_FAULTS = {
  'all-capitals': true,
  capital: true,
  foreign: true,
  guessed: true,
  numeral: true,
  'unlisted-name': true,
  'unsettled-heteronym': true,
} as const satisfies Record<Exclude<FaultCode, (typeof REASON_CODES)[number]>, true>

export type MessageReason = FaultCode | keyof typeof RULE_REASONS

export const MESSAGE_REASONS: readonly MessageReason[] = [
  ...REASON_CODES,
  ...(Object.keys(OTHER_FAULTS) as (keyof typeof OTHER_FAULTS)[]),
  ...(Object.keys(RULE_REASONS) as (keyof typeof RULE_REASONS)[]),
]
