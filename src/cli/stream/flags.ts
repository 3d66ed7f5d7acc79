// Flags of a stream that can hold for no record, told once before any is read.

import type { Layer, Settings } from '../../config/index.ts'
import { listBuiltIns, loadBuiltIn } from '../../packaged/data.ts'
import { type Problem, withOrigin } from '../../problem/index.ts'
import type { Resources } from '../../resources/types.ts'
import { findStep } from '../../sequence/index.ts'
import { toStepUnknown } from '../../sequence/unknown-step.ts'

/** `settings` are those of a record that says nothing itself. */
export async function findFlagMistakes(
  { sequence: named, accent }: Settings,
  flags: Layer,
  resources: Resources,
): Promise<readonly Problem[]> {
  const found = await resources.sequence(named.value, accent.value)
  if (!found.ok) return found.problems.map((problem) => withOrigin(problem, named))
  const sequence = found.value
  const { step } = flags
  if (step === undefined || findStep(sequence, step.value)) return []
  // Without --sequence, a record may name the one that has the step.
  if (flags.sequence === undefined && listBuiltIns().some((one) => hasStep(one, step.value))) return []
  return [withOrigin(toStepUnknown(step.value, sequence), step)]
}

function hasStep(name: string, step: string): boolean {
  const sequence = loadBuiltIn(name, undefined)
  return sequence !== undefined && findStep(sequence, step) !== undefined
}
