// Flags of a stream that can hold for no record, told once before any is read.

import type { Layer, Settings } from '../../config/index.ts'
import { listBuiltIns, loadBuiltIn } from '../../packaged/data.ts'
import { isMissing, type Resources } from '../../resources/types.ts'
import { findStep } from '../../sequence/index.ts'
import { toStepUnknown } from '../../sequence/unknown-step.ts'

/** `settings` are those of a record that says nothing itself. */
export async function findFlagMistakes(
  { sequence: { value: name, origin }, accent }: Settings,
  flags: Layer,
  resources: Resources,
): Promise<readonly string[]> {
  const sequence = await resources.sequence(name, accent.value)
  if (isMissing(sequence)) return sequence.problems.map((problem) => `${problem} (set in ${origin})`)
  const step = flags.step?.value
  if (step === undefined || findStep(sequence, step)) return []
  // Without --sequence, a record may name the one that has the step.
  if (flags.sequence === undefined && listBuiltIns().some((one) => hasStep(one, step))) return []
  return [`The ${toStepUnknown(step, sequence, 'set in --step')}`]
}

function hasStep(name: string, step: string): boolean {
  const sequence = loadBuiltIn(name, undefined)
  return sequence !== undefined && findStep(sequence, step) !== undefined
}
