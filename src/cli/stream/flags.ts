// Flags of a stream that can hold for no record, told once before any is read.

import { findWhoReads } from '../../check/who-reads.ts'
import type { Layer, Settings } from '../../config/index.ts'
import { listBuiltIns, loadBuiltIn } from '../../packaged/data.ts'
import type { Problem } from '../../problem/index.ts'
import type { Resources } from '../../resources/types.ts'
import { findStep } from '../../sequence/index.ts'

/** `settings` are those of a record that says nothing itself. */
export async function findFlagMistakes(
  settings: Settings,
  { sequence, step }: Layer,
  resources: Resources,
): Promise<readonly Problem[]> {
  const found = await findWhoReads({ ...settings, step: step ?? { value: undefined, origin: 'default' } }, resources)
  if (found.ok) return []
  // Without --sequence, a record may name the one that has the step.
  const isElsewhere = step !== undefined && listBuiltIns().some((one) => hasStep(one, step.value))
  return sequence === undefined && isElsewhere ? [] : found.problems
}

function hasStep(name: string, step: string): boolean {
  const sequence = loadBuiltIn(name, undefined)
  return sequence !== undefined && findStep(sequence, step) !== undefined
}
