// What a child at a step knows: the sum of what the steps so far have added.

import { toStraight } from '../apostrophe.ts'
import type { Ending, EndingChange, Knowledge, LimitChanges, Limits, Sequence, Step, StepAdds } from './types.ts'
import { ENDING_CHANGES, ENDINGS } from './vocabulary.ts'

const known = new WeakMap<Sequence, Map<string, Knowledge>>()

/** The step of that id, in any case. */
export function findStep(sequence: Sequence, id: string): Step | undefined {
  return sequence.steps.find((step) => step.id === id) ?? sequence.steps.find((step) => isSame(step.id, id))
}

/** The place of a step in its sequence, from 0; -1 where the sequence has no such step. */
export function toStepIndex(sequence: Sequence, id: string): number {
  const at = sequence.steps.findIndex((step) => step.id === id)
  return at < 0 ? sequence.steps.findIndex((step) => isSame(step.id, id)) : at
}

/**
 * All that is known once the step has been taught. Summed once per sequence, then remembered.
 * @throws RangeError where the sequence has no step of that id; look it up with `findStep` first.
 */
export function knowledgeAt(sequence: Sequence, stepId: string): Knowledge {
  const sums = known.get(sequence) ?? sumSteps(sequence)
  known.set(sequence, sums)
  const knowledge = sums.get(stepId) ?? sums.get(findStep(sequence, stepId)?.id ?? '')
  if (knowledge === undefined) throw new RangeError(`The sequence "${sequence.name}" has no step "${stepId}".`)
  return knowledge
}

function sumSteps(sequence: Sequence): Map<string, Knowledge> {
  const sums = new Map<string, Knowledge>()
  let knowledge = toStart(sequence)
  for (const step of sequence.steps) {
    knowledge = add(knowledge, step.adds)
    sums.set(step.id, knowledge)
  }
  return sums
}

// What a sequence never speaks of is no limit in it: a file without `marks:` has no wish to check marks, and an ending that
// it never names is sounded out like the rest of the word. But a contraction is always taught: its letters do not say it.
function toStart(sequence: Sequence): Knowledge {
  const isSilentOn = (key: keyof StepAdds) => sequence.steps.every(({ adds }) => isEmpty(adds[key]))
  const named = new Set<Ending>(sequence.steps.flatMap(({ adds }) => adds.endings))
  const namedChanges = new Set<EndingChange>(sequence.steps.flatMap(({ adds }) => adds.endingChanges))
  const isSounded = (ending: Ending) =>
    sequence.endings === 'sounded' || (sequence.endings === 'named' && !named.has(ending))
  return {
    correspondences: new Set(),
    sightWords: new Set(),
    shapes: isSilentOn('shapes') ? 'any' : new Set(),
    endings: new Set(),
    endingChanges: new Set(),
    contractions: new Set(),
    marks: isSilentOn('marks') ? 'any' : new Set(),
    capitals: isSilentOn('capitals') ? 'all' : 'none',
    numerals: isSilentOn('numerals'),
    limits: {},
    soundedEndings: new Set(ENDINGS.filter(isSounded)),
    soundedChanges: new Set(Object.values(ENDING_CHANGES).filter((change) => !namedChanges.has(change))),
    reducedVowels: sequence.reducedVowels,
  }
}

// A contraction taught by name is known by heart, and stays so when a later step allows any that can be sounded out.
function add(before: Knowledge, adds: StepAdds): Knowledge {
  const named = adds.contractions === 'any' ? [] : adds.contractions.map(toSightKey)
  const { knownWithSightWord = new Map<string, Knowledge>(), ...sum } = before
  const after: Knowledge = {
    ...sum,
    correspondences: union(
      before.correspondences,
      adds.correspondences.map(({ key }) => key),
    ),
    sightWords: union(before.sightWords, [...adds.sightWords.map(toSightKey), ...named]),
    shapes: unionOrAny(before.shapes, adds.shapes),
    endings: union(before.endings, adds.endings),
    endingChanges: union(before.endingChanges, adds.endingChanges),
    contractions: unionOrAny(before.contractions, adds.contractions === 'any' ? 'any' : named),
    marks: unionOrAny(before.marks, adds.marks),
    capitals: adds.capitals ?? before.capitals,
    numerals: adds.numerals ?? before.numerals,
    limits: moveLimits(before.limits, adds.limits),
  }
  if (adds.sightWords.length === 0) return { ...after, knownWithSightWord }
  const fresh = adds.sightWords.map(toSightKey).map((word) => [word, after] as const)
  return { ...after, knownWithSightWord: new Map([...fresh, ...knownWithSightWord]) }
}

/** A word as a set of sight words or contractions holds it: lower case, straight apostrophes, but `I` stays `I`. */
export function toSightKey(word: string): string {
  const straight = toStraight(word)
  return straight === 'I' ? straight : straight.toLowerCase()
}

function moveLimits(before: Limits, changes: LimitChanges): Limits {
  const after: Record<string, number> = { ...before }
  for (const [limit, change] of Object.entries(changes)) {
    if (change === 'any') delete after[limit]
    else if (change !== undefined) after[limit] = change
  }
  return after
}

function union<Item>(before: ReadonlySet<Item>, added: readonly Item[]): ReadonlySet<Item> {
  return added.length === 0 ? before : new Set([...before, ...added])
}

function unionOrAny<Item>(
  before: ReadonlySet<Item> | 'any',
  added: readonly Item[] | 'any',
): ReadonlySet<Item> | 'any' {
  return before === 'any' || added === 'any' ? 'any' : union(before, added)
}

function isEmpty(added: unknown): boolean {
  return added === undefined || (Array.isArray(added) && added.length === 0)
}

function isSame(left: string, right: string): boolean {
  return left.toLowerCase() === right.toLowerCase()
}
