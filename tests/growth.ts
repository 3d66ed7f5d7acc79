// Whether work grows with its size and not with its square. Times are only compared with one another, so a slow or busy
// machine changes nothing; the best of three is taken, so a pause in one run does not count.

import { expect } from 'vitest'

/** A few milliseconds are no measure. */
const LEAST = 20

/** `work` is done for a size and for four times that: linear work takes 4 times as long, quadratic work 16 times. */
export function expectLinear(work: (size: number) => unknown, size: number, name?: string): void {
  const best = (wanted: number): number => Math.min(...[1, 2, 3].map(() => time(() => work(wanted))))
  const short = best(size)
  expect(best(size * 4), name).toBeLessThan(Math.max(LEAST, short * 10))
}

function time(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}
