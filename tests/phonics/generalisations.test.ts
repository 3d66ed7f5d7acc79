// Phonic generalisations counted over the primary-grade vocabulary, against Clymer (1963). His shares are from memory; a
// count over another list differs by some points: within 5 for consonants, 12 for vowels, or with the reason said.

import { expect, it } from 'vitest'
import { measureGeneralisations } from '../../scripts/accuracy/clymer.ts'
import { openEngine } from '../../scripts/accuracy/engine.ts'

// Measured in a test: what is asked while tests are gathered belongs to none, so `npm run mutate` would try it with all of them.
it('forty generalisations hold as often as he counted, or it is said why not', () => {
  const rows = measureGeneralisations(openEngine())
  expect(rows.length).toBeGreaterThanOrEqual(40)
  for (const { n, ours, published, allowed, why, words } of rows) {
    expect(words, n).toBeGreaterThan(0)
    const isFar = Math.abs(ours - published) > allowed
    expect(isFar, n).toBe(why !== undefined)
  }
})
