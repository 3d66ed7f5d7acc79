// Teaches the model that weighs what stands round a look-alike, from judged sentences.

import { toHashes, toShares, UNIT } from '../../../src/phonics/heteronyms/learned/weights.ts'
import type { Place } from '../../../src/phonics/heteronyms/place.ts'
import type { Heteronym } from '../../../src/phonics/heteronyms/types.ts'

export interface Example {
  readonly row: Heteronym
  readonly place: Place
  readonly form: string
  /** Written to teach by: it says nothing of how usual a form is. */
  readonly isMade?: boolean
}

export interface TeachOptions {
  readonly rounds: number
  readonly rate: number
  /** How much weights are held back. */
  readonly decay: number
  /** Weights below it are left out. */
  readonly least: number
  /** Signs that fewer examples show are left out. */
  readonly often: number
}

export const DEFAULTS: TeachOptions = { rounds: 12, rate: 0.15, decay: 0.003, least: 0.12, often: 4 }

interface Lesson {
  readonly forms: readonly Int32Array[]
  readonly right: number
}

/** Bytes as `openWeights` reads them. The same for the same examples in the same order. */
export function teach(examples: readonly Example[], options: TeachOptions = DEFAULTS): Uint8Array {
  const seen = new Map<number, number>()
  const hashed = examples.map(({ row, place, form, isMade }) => ({
    forms: toHashes(row, place, isMade),
    right: row.forms.findIndex((one) => one.form === form),
  }))
  for (const { forms } of hashed) for (const hash of forms.flat()) seen.set(hash, (seen.get(hash) ?? 0) + 1)
  const ids = new Map([...seen].filter(([, times]) => times >= options.often).map(([hash], id) => [hash, id]))
  const lessons = hashed.map(
    ({ forms, right }): Lesson => ({
      forms: forms.map((hashes) => Int32Array.from(hashes.flatMap((hash) => ids.get(hash) ?? []))),
      right,
    }),
  )
  const weights = learn(lessons, ids.size, options)
  const kept = [...ids]
    .map(([hash, id]) => [hash, toByte(weights[id] ?? 0)] as const)
    .filter(([, weight]) => Math.abs(weight) >= options.least * UNIT)
    .sort(([one], [other]) => one - other)
  const bytes = new Uint8Array(4 + kept.length * 5)
  const view = new DataView(bytes.buffer)
  view.setUint32(0, kept.length, true)
  for (const [at, [hash, weight]] of kept.entries()) {
    view.setUint32(4 + at * 4, hash, true)
    view.setInt8(4 + kept.length * 4 + at, weight)
  }
  return bytes
}

const toByte = (weight: number): number => Math.max(-127, Math.min(127, Math.round(weight * UNIT)))

/** Maximum entropy by steps that grow smaller for each weight as it moves (Duchi, Hazan and Singer 2011). */
function learn(lessons: readonly Lesson[], size: number, { rounds, rate, decay }: TeachOptions): Float64Array {
  const weights = new Float64Array(size)
  const moved = new Float64Array(size).fill(1e-6)
  const order = lessons.map((_, at) => at)
  const random = createRandom()
  for (let round = 0; round < rounds; round++) {
    for (let at = order.length - 1; at > 0; at--) {
      const other = Math.floor(random() * (at + 1))
      ;[order[at], order[other]] = [order[other] as number, order[at] as number]
    }
    for (const at of order) {
      const { forms, right } = lessons[at] as Lesson
      const shares = toShares(forms.map((ids) => ids.reduce((sum, id) => sum + (weights[id] ?? 0), 0)))
      for (const [k, ids] of forms.entries()) {
        const error = (shares[k] ?? 0) - Number(k === right)
        for (const id of ids) {
          const slope = error + decay * (weights[id] ?? 0)
          moved[id] = (moved[id] ?? 0) + slope * slope
          weights[id] = (weights[id] ?? 0) - (rate * slope) / Math.sqrt(moved[id] ?? 1)
        }
      }
    }
  }
  return weights
}

/** Lehmer's generator: the same order each time. */
function createRandom(): () => number {
  let state = 20261129
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}
