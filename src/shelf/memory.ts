// Makes a thing once for each sequence, each list of sight words and each step.

import type { Sequence } from '../sequence/types.ts'

export function createMemory<Made>(
  create: (sequence: Sequence, sightWords: readonly string[], step: string) => Made,
): (sequence: Sequence, sightWords: readonly string[], step?: string) => Made {
  const known = new WeakMap<Sequence, Map<string, Made>>()
  return (sequence, sightWords, step = '') => {
    const made = known.get(sequence) ?? new Map<string, Made>()
    known.set(sequence, made)
    const name = [step, ...sightWords].join('\n')
    const before = made.get(name)
    if (before !== undefined) return before
    const fresh = create(sequence, sightWords, step)
    made.set(name, fresh)
    return fresh
  }
}
