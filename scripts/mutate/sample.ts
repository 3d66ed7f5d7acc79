// Stryker runs every mutant of a file and knows no sampling, and its ranges take in what is nested. So the list that its instrumenter makes is cut here:
// all mutants stay in the code, but those outside the sample are told to be ignored before any test runs.

import { relative } from 'node:path'
import { Instrumenter } from '@stryker-mutator/instrumenter'
import { shuffle } from '../../src/finder/order.ts'

export interface Sample {
  /** How many mutants there were, once they have been counted. */
  all: number
  /** To try no others than these, as `toKey` names them. */
  only?: ReadonlySet<string> | undefined
}

/** From now on Stryker tries only `size` mutants, the same for the same seed and code. */
export function sampleMutants(size: number, seed: number): Sample {
  const sample: Sample = { all: 0 }
  const instrument = Instrumenter.prototype.instrument
  Instrumenter.prototype.instrument = async function (...given) {
    const result = await instrument.apply(this, given)
    sample.all = result.mutants.length
    const chosen = sample.only ?? new Set(shuffle(result.mutants.map(toKey), seed).slice(0, size))
    const mutants = result.mutants.map((mutant) =>
      chosen.has(toKey(mutant)) ? mutant : { ...mutant, status: 'Ignored' as const, statusReason: 'not in the sample' },
    )
    return { ...result, mutants }
  }
  return sample
}

interface Mutant {
  readonly id: string
  readonly fileName: string
}

/** The ids count up in the order of files, so they are the same while the code is. */
export const toKey = ({ id, fileName }: Mutant): string => `${relative('.', fileName)} ${id}`
