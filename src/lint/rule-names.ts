// Names of rules that somebody misspelt: which one was meant, and where all of them are shown.

import { findNearest, findNearestBeginning } from '../nearest.ts'
import { type Problem, toExpected, toProblem } from '../problem/index.ts'

/** Whether a text is meant as the name of a rule rather than as a word of the story. */
export const isLikeRule = (written: string): boolean => /^(?:max|min|no)-./u.test(written)

/** The rule that was meant; of a name that somebody cut short, the only one that begins so. */
export function findNearestRule(written: string, ids: readonly string[]): string | undefined {
  return findNearest(written, ids) ?? (isLikeRule(written) ? findNearestBeginning(written, ids) : undefined)
}

/** That there is no such rule, and the nearest one or where all of them are shown; without a place. */
export function toUnknownRule(written: string, ids: readonly string[]): Problem {
  const nearest = findNearestRule(written, ids)
  return toProblem({
    code: 'unknown-name',
    message: `There is no rule \`${written}\``,
    expected: toExpected(nearest),
    ...(nearest === undefined && { note: '`battledore check --print-config STORY` shows all rules.' }),
  })
}
