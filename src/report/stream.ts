// A line of `stream`: the fields of a file of the JSON report under the id of its record. schemas/stream.schema.json describes it.

import type { CheckedStory } from '../check/result.ts'
import { type Problem, toProblemLine } from '../problem/index.ts'
import { toStoryFields, toTotals } from './json.ts'
import type { JsonBytes } from './json-bytes.ts'
import { toProblemFields } from './problems.ts'

/** The same bytes as `JSON.stringify` of `toFileFields` under the id. @param id as JSON */
export function writeStreamResult(id: string, story: CheckedStory, out: JsonBytes): void {
  const inner = JSON.stringify(toStoryFields(story)).slice(1, -1)
  out.text(`{"id":${id},${inner},"messages":`)
  out.messages(story)
  out.text('}\n')
}

/** A story that nobody asks messages of. */
export interface CountedStory extends Pick<CheckedStory, 'accent' | 'figures'> {
  readonly sequence: string
  readonly step: string
}

/** The line of a result without pages and messages. @param id as JSON */
export function writeStreamTotals(id: string, { figures, ...story }: CountedStory, out: JsonBytes): void {
  out.text(`{"id":${id},${JSON.stringify({ ...story, totals: toTotals(figures) }).slice(1)}\n`)
}

/** `error` is the first problem in one line, for who only wants to see it. @param id as JSON */
export function writeStreamError(id: string, problems: readonly Problem[], out: JsonBytes): void {
  const error = problems.slice(0, 1).map(toProblemLine).join()
  const inner = JSON.stringify({ error, problems: problems.map(toProblemFields) }).slice(1)
  out.text(`{"id":${id},${inner}\n`)
}
