// A line of `stream`: the fields of a file of the JSON report under the id of its record. schemas/stream.schema.json describes it.

import type { CheckedStory } from '../check/result.ts'
import { type Problem, toProblemLine } from '../problem/index.ts'
import { toFileFields } from './json.ts'
import { toProblemFields } from './problems.ts'

type Id = string | number | boolean | null

export const toStreamResult = (id: Id, story: CheckedStory): unknown => ({ id, ...toFileFields(story) })

/** `error` is the first problem in one line, for who only wants to see it. */
export const toStreamError = (id: Id, problems: readonly Problem[]): unknown => ({
  id,
  error: problems.slice(0, 1).map(toProblemLine).join(),
  problems: problems.map(toProblemFields),
})
