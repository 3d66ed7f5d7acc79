// What a child at a step knows: the sum of what the steps so far have added.

import { toStraight } from '../apostrophe.ts'
import type { CorrespondenceKey } from '../phonics/types.ts'
import type { Ending, EndingChange, Knowledge, LimitChanges, Limits, Sequence, Step, StepAdds } from './types.ts'
import { ENDING_CHANGES, ENDINGS } from './vocabulary.ts'

/** What is summed once for a sequence. */
interface Sums {
  /** By id of the step. Each is made when it is asked for: a check of one story asks for some of them. */
  readonly known: Map<string, Knowledge>
  /** By place of the step: all but the two long sets. */
  readonly rests: readonly Rest[]
  /** By sight word: the place of the first step that teaches it. */
  readonly taught: ReadonlyMap<string, number>
}

type Rest = Omit<Knowledge, 'correspondences' | 'sightWords' | 'knownWithSightWord'>

const all = new WeakMap<Sequence, Sums>()

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
  let sums = all.get(sequence)
  if (sums === undefined) all.set(sequence, (sums = toSums(sequence)))
  const before = sums.known.get(stepId)
  if (before !== undefined) return before
  const at = toStepIndex(sequence, stepId)
  const step = sequence.steps[at]
  if (step === undefined) throw new RangeError(`The sequence "${sequence.name}" has no step "${stepId}".`)
  const knowledge = sums.known.get(step.id) ?? sum(sequence, at, sums)
  sums.known.set(step.id, knowledge)
  return knowledge
}

function toSums(sequence: Sequence): Sums {
  const rests: Rest[] = []
  const taught = new Map<string, number>()
  let rest = toStart(sequence)
  sequence.steps.forEach(({ adds }, at) => {
    rests.push((rest = add(rest, adds)))
    for (const word of adds.sightWords.map(toSightKey)) if (!taught.has(word)) taught.set(word, at)
  })
  return { known: new Map(), rests, taught }
}

function sum(sequence: Sequence, at: number, { rests, taught }: Sums): Knowledge {
  const correspondences = new Set<CorrespondenceKey>()
  const sightWords = new Set<string>()
  for (const { adds } of sequence.steps.slice(0, at + 1)) {
    for (const { key } of adds.correspondences) correspondences.add(key)
    for (const word of [...adds.sightWords, ...toNamed(adds)]) sightWords.add(toSightKey(word))
  }
  const toKnown = (index: number): Knowledge | undefined =>
    index > at ? undefined : knowledgeAt(sequence, sequence.steps[index]?.id ?? '')
  return {
    ...(rests[at] as Rest),
    correspondences,
    sightWords,
    knownWithSightWord: { get: (word) => toKnown(taught.get(word) ?? Number.POSITIVE_INFINITY) },
  }
}

// What a sequence never speaks of is no limit in it: a file without `marks:` has no wish to check marks, and an ending that
// it never names is sounded out like the rest of the word. But a contraction is always taught: its letters do not say it.
function toStart(sequence: Sequence): Rest {
  const isSilentOn = (key: keyof StepAdds) => sequence.steps.every(({ adds }) => isEmpty(adds[key]))
  const named = new Set<Ending>(sequence.steps.flatMap(({ adds }) => adds.endings))
  const namedChanges = new Set<EndingChange>(sequence.steps.flatMap(({ adds }) => adds.endingChanges))
  const isSounded = (ending: Ending) =>
    sequence.endings === 'sounded' || (sequence.endings === 'named' && !named.has(ending))
  return {
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
const toNamed = ({ contractions }: StepAdds): readonly string[] => (contractions === 'any' ? [] : contractions)

function add(before: Rest, adds: StepAdds): Rest {
  return {
    ...before,
    shapes: unionOrAny(before.shapes, adds.shapes),
    endings: union(before.endings, adds.endings),
    endingChanges: union(before.endingChanges, adds.endingChanges),
    contractions: unionOrAny(
      before.contractions,
      adds.contractions === 'any' ? 'any' : adds.contractions.map(toSightKey),
    ),
    marks: unionOrAny(before.marks, adds.marks),
    capitals: adds.capitals ?? before.capitals,
    numerals: adds.numerals ?? before.numerals,
    limits: moveLimits(before.limits, adds.limits),
  }
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
