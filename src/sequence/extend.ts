// Puts the steps of a file together with those of the sequence that it extends.

import { findNearest } from '../nearest.ts'
import { type Found, type Problem, toExpected } from '../problem/index.ts'
import type { StepFile } from './schema.ts'
import { findMeantStep, findNearStep, findSeriesBefore } from './slips.ts'
import type { Source } from './source.ts'
import type { Step } from './types.ts'

/** One step of the whole: what the extended sequence has of it, what the file has of it, or both. */
export interface StepDraft {
  readonly id: string
  readonly base?: Step
  readonly own?: StepFile
  /** The place of `own` in the file's list. */
  readonly at?: number
}

/** The steps in order. An own step of a known id adds to it, one with `after` follows that step, others come at the end. */
export function toDrafts(
  base: readonly Step[],
  own: readonly StepFile[],
  source: Source,
): { readonly drafts: readonly StepDraft[]; readonly problems: readonly Problem[] } {
  const drafts: StepDraft[] = base.map((step) => ({ id: step.id, base: step }))
  const problems: Problem[] = []
  const seen = new Map<string, number>()
  for (const [at, step] of own.entries()) {
    const twin = seen.get(step.id.toLowerCase())
    if (twin !== undefined) {
      const message = `The id \`${step.id}\` is already used on line ${source.lineOf(['steps', twin, 'id'])}`
      problems.push(source.problemAt(['steps', at, 'id'], { code: 'repeated', message }))
      continue
    }
    seen.set(step.id.toLowerCase(), at)
    const draft = { id: step.id, own: step, at }
    const place = drafts.findIndex(({ id }) => id === step.id)
    const before = drafts[place]
    if (before === undefined) problems.push(...findMeant(step, at, base, source))
    else if (step.after !== undefined) problems.push(toMoveProblem(step, at, source))
    if (before !== undefined) drafts.splice(place, 1, { ...before, ...draft })
    else drafts.splice(findPlace(step, at, drafts, source, problems), 0, draft)
  }
  return { drafts, problems }
}

function findMeant(step: StepFile, at: number, base: readonly Step[], source: Source): readonly Problem[] {
  const ids = base.map(({ id }) => id)
  const tell = (found: Found) => [source.problemAt(['steps', at, 'id'], found)]
  const beside = (other: string) =>
    `\`${step.id}\` would be a new step beside \`${other}\`. Write the same id to add to that step`
  const same = findMeantStep(step.id, ids)
  if (same !== undefined) return tell({ code: 'unknown-name', message: beside(same), expected: [same] })
  const near = findNearStep(step.id, ids)
  if (near !== undefined)
    return tell({ code: 'unknown-name', severity: 'warning', message: beside(near), expected: [near] })
  const last = step.after === undefined ? findSeriesBefore(step.id, ids) : undefined
  if (last === undefined) return []
  const message = `\`${step.id}\` is no step of the sequence that this file extends, so it is a new one, at the end`
  const note = `If that is meant, say where it stands: \`after: ${last}\`.`
  return tell({ code: 'unknown-name', severity: 'warning', message, note })
}

function toMoveProblem({ id }: StepFile, at: number, source: Source): Problem {
  const message = `\`${id}\` is a step already and stays where it is. Leave out \`after\`, or give a new step an id of its own`
  return source.problemAt(['steps', at, 'after'], { code: 'bad-value', message })
}

function findPlace(
  step: StepFile,
  at: number,
  drafts: readonly StepDraft[],
  source: Source,
  problems: Problem[],
): number {
  if (step.after === undefined) return drafts.length
  const place = drafts.findIndex(({ id }) => id === step.after)
  if (place !== -1) return place + 1
  const ids = drafts.map(({ id }) => id)
  const message = `There is no step \`${step.after}\` before this one`
  const expected = toExpected(findNearest(step.after, ids))
  problems.push(source.problemAt(['steps', at, 'after'], { code: 'unknown-name', message, expected }))
  return drafts.length
}
