// Whether work grows with its size and not with its square. Times are only compared with one another, so a slow or busy
// machine changes nothing. A pause can lengthen a run but none can shorten it, so the best of three is taken, and a bad
// ratio is measured again: what grows with its square never has a good one.

import { expect } from 'vitest'

/** A few milliseconds are no measure. */
const LEAST = 20

const ROUNDS = 4

/** `work` is done for a size and for four times that: linear work takes 4 times as long, quadratic work 16 times. */
export function expectLinear(work: (size: number) => unknown, size: number, name?: string): void {
  const times = { short: Number.POSITIVE_INFINITY, long: Number.POSITIVE_INFINITY }
  const isLinear = (): boolean => times.long < Math.max(LEAST, times.short * 10)
  for (let round = 0; round < ROUNDS && !isLinear(); round += 1) {
    times.short = best(() => work(size))
    times.long = best(() => work(size * 4))
  }
  expect(times.long, name).toBeLessThan(Math.max(LEAST, times.short * 10))
}

/** `work` takes less than one part in so many of what the whole takes. */
export function expectPart(work: () => unknown, whole: () => unknown, parts: number, name?: string): void {
  const times = { work: Number.POSITIVE_INFINITY, whole: 0 }
  for (let round = 0; round < ROUNDS && times.work * parts >= times.whole; round += 1) {
    times.whole = best(whole)
    times.work = best(work)
  }
  expect(times.work * parts, name).toBeLessThan(times.whole)
}

const best = (work: () => unknown): number => Math.min(...[1, 2, 3].map(() => time(work)))

function time(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}
