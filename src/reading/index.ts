// The verdict on words and the figures counted from verdicts: what other folders may use.

export { findOwner, isContraction } from './apostrophe.ts'
export { type CountedWord, toDifferentFigures, toFigures, toWordKey } from './figures.ts'
export { createWordJudge, type WordJudge } from './judge-word.ts'
export { findFirstStep, findReadableAt, type JudgeOptions, judgeInSequence } from './look-ahead.ts'
export { isAllowedName, markNames } from './names.ts'
export type { Figures, JudgedWord, Reason, ReasonCode, Verdict } from './types.ts'
export { toKey } from './unit.ts'
export { isSightWord, judge } from './verdict.ts'
