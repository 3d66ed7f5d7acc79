// Sequences as plain JSON with every sound found, so that a built-in one starts without YAML, schema or example words.

import type { Accent } from '../phonics/types.ts'
import type { Sequence, Step, TaughtCorrespondence } from './types.ts'

type Packed = readonly (readonly [letters: string, example: string, key: string])[]

/** One sequence in all accents it was compiled for: its steps once, and each accent's correspondences step by step. */
export interface CompiledSequence extends Omit<Sequence, 'steps'> {
  readonly steps: readonly (Omit<Step, 'adds'> & { readonly adds: Omit<Step['adds'], 'correspondences'> })[]
  readonly correspondences: { readonly [A in Accent]?: readonly Packed[] }
}

/** Packs a sequence, the one in its own accent first. All must have the same steps. */
export function sequenceToJson(own: Sequence, ...others: readonly Sequence[]): CompiledSequence {
  const correspondences = Object.fromEntries([own, ...others].map((one) => [one.accent, one.steps.map(toPacked)]))
  const steps = own.steps.map(({ adds: { correspondences: _, ...adds }, ...step }) => ({ ...step, adds }))
  return { ...own, steps, correspondences }
}

/**
 * Unpacks a sequence in an accent, its own unless another is asked for.
 * @throws RangeError where it was not compiled for that accent
 */
export function sequenceFromJson(json: CompiledSequence, accent: Accent = json.accent): Sequence {
  const { correspondences, ...sequence } = json
  const packed = correspondences[accent]
  if (packed === undefined) throw new RangeError(`The sequence "${json.name}" was not compiled for ${accent}.`)
  const steps = sequence.steps.map((step, index) => ({
    ...step,
    adds: { ...step.adds, correspondences: toTaught(packed[index] ?? []) },
  }))
  return { ...sequence, accent, steps }
}

function toPacked({ adds }: Step): Packed {
  return adds.correspondences.map(({ letters, example, key }) => [letters, example, key])
}

function toTaught(packed: Packed): readonly TaughtCorrespondence[] {
  return packed.map(([letters, example, key]) => ({ letters, example, key: key as TaughtCorrespondence['key'] }))
}
