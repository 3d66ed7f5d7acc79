// The verdict on words and the figures counted from verdicts: what other folders may use.

export { ABBREVIATED, findAbbreviation, findPlaceSign } from './abbreviations.ts'
export { findOwner, isContraction } from './apostrophe.ts'
export { REASON_CODES } from './faults.ts'
export {
  BY_HARDNESS,
  type CountedWord,
  createTally,
  toDifferentFigures,
  toFigures,
  toKind,
  toShares,
  toWordKey,
} from './figures.ts'
export { createWordJudge, hasMixedForms, keepForm, type WordJudge } from './judge-word.ts'
export { findFirstStep, findReadableAt, type JudgeOptions, judgeInSequence } from './look-ahead.ts'
export { findNamedOwner, isAllowedName, markNames } from './names.ts'
export { findPattern, findPatternLines, type Pattern } from './pattern.ts'

export type { Reason, Verdict } from './types.ts'
export { findUnitExample } from './unit-example.ts'
export { isReadable, judge } from './verdict.ts'
