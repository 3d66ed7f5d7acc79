// A line of `stream`: the fields of a file of the JSON report under the id of its record. schemas/stream.schema.json describes it.

import type { CheckedStory } from '../check/result.ts'
import { toFileFields } from './json.ts'

type Id = string | number | boolean | null

export const toStreamResult = (id: Id, story: CheckedStory): unknown => ({ id, ...toFileFields(story) })

/** `error` is the first reason, `reasons` are all. */
export const toStreamError = (id: Id, reasons: readonly string[]): unknown => ({
  id,
  error: reasons[0] ?? 'The text could not be checked.',
  reasons,
})
