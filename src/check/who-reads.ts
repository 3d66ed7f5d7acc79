// Who reads: the one answer to which sequence holds, which step is reached, what the reader knows beyond it, and in which
// accent words are said.

import type { Settings } from '../config/index.ts'
import type { Phonics } from '../phonics/types.ts'
import { fail, type Result, type Sourced, succeed, withOrigin } from '../problem/index.ts'
import type { Resources } from '../resources/types.ts'
import { findStep } from '../sequence/index.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import { toStepUnknown } from '../sequence/unknown-step.ts'

/** What names a reader: the settings that hold, or some flags. */
export type NamesReader = Pick<Settings, 'sequence' | 'accent'> &
  Partial<Pick<Settings, 'step' | 'reducedVowels' | 'sightWords'>>

export interface WhoReads {
  readonly sequence: Sequence
  /** The id of a step of the sequence; undefined where nothing names one. */
  readonly step: string | undefined
  /** What the reader knows beyond or short of the step, the settings among it; undefined where that is nothing. */
  readonly reader: ReaderExtra | undefined
  readonly phonics: Phonics
}

type Tools = Pick<Resources, 'sequence' | 'phonicsFor'>

/** @param extra what a file of the reader says */
export async function findWhoReads(
  settings: NamesReader,
  resources: Tools,
  extra?: ReaderExtra,
): Promise<Result<WhoReads>> {
  const found = await findSequence(settings, resources)
  if (!found.ok) return found
  const sequence = found.value
  const asked = settings.step?.value
  const step = asked === undefined ? undefined : findStep(sequence, asked)?.id
  if (asked !== undefined && step === undefined)
    return fail(withOrigin(toStepUnknown(asked, sequence), settings.step as Sourced<string>))
  const reader = withSightWords(extra, settings)
  return succeed({ sequence, step, reader, phonics: resources.phonicsFor(sequence.accent) })
}

/** The sequence as the settings have it; for those who count without a step. */
export async function findSequence(
  { sequence, accent, reducedVowels }: Omit<NamesReader, 'step'>,
  resources: Pick<Tools, 'sequence'>,
): Promise<Result<Sequence>> {
  const found = await resources.sequence(sequence.value, accent.value)
  if (!found.ok) return { ok: false, problems: found.problems.map((problem) => withOrigin(problem, sequence)) }
  return succeed(withReducedVowels(found.value, reducedVowels?.value))
}

function withSightWords(
  reader: ReaderExtra | undefined,
  { sightWords = [] }: Pick<NamesReader, 'sightWords'>,
): ReaderExtra | undefined {
  if (sightWords.length === 0) return reader
  return { ...reader, sightWords: [...(reader?.sightWords ?? []), ...sightWords.map(({ value }) => value)] }
}

const changed = new WeakMap<Sequence, Sequence>()

/** One changed copy for all stories, so that what is summed over its steps is summed once. */
function withReducedVowels(sequence: Sequence, reducedVowels: Sequence['reducedVowels'] | undefined): Sequence {
  if (reducedVowels === undefined || reducedVowels === sequence.reducedVowels) return sequence
  const copy = changed.get(sequence) ?? { ...sequence, reducedVowels }
  changed.set(sequence, copy)
  return copy
}

/** What the settings add to the words that are never proposed, and what they clear. */
export const toFitness = ({
  unfitWords,
  fitWords,
}: Pick<Settings, 'unfitWords' | 'fitWords'>): {
  readonly unfit: readonly string[]
  readonly fit: readonly string[]
} => ({
  unfit: unfitWords.map(({ value }) => value),
  fit: fitWords.map(({ value }) => value),
})
