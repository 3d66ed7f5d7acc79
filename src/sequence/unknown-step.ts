// Where somebody names a step that a sequence does not have, or names none.

import { findNearest } from '../nearest.ts'
import { type Problem, toExpected, toProblem } from '../problem/index.ts'
import type { Sequence } from './types.ts'

/** With the nearest step or all of them; without a place. */
export function toStepUnknown(step: string, { name, steps }: Sequence): Problem {
  const ids = steps.map(({ id }) => id)
  const nearest = findNearest(step, ids)
  return toProblem({
    code: 'unknown-name',
    message: `The sequence \`${name}\` has no step \`${step}\``,
    expected: toExpected(nearest),
    ...(nearest === undefined && { note: `Its steps are ${ids.join(', ')}.` }),
  })
}
