// Phonic generalisations counted over the primary-grade vocabulary, against Clymer (1963). His shares are from memory; a
// count over another list differs by some points: within 5 for consonants, 12 for vowels, or with the reason said.

import { describe, expect, it } from 'vitest'
import { measureGeneralisations } from '../../scripts/accuracy/clymer.ts'
import { openEngine } from '../../scripts/accuracy/engine.ts'

const rows = measureGeneralisations(openEngine())

describe('generalisations', () => {
  it('counts forty of them', () => {
    expect(rows.length).toBeGreaterThanOrEqual(40)
  })

  it.each(rows.map((row) => [row.n, row] as const))('%s', (_, { ours, published, allowed, why, words }) => {
    expect(words).toBeGreaterThan(0)
    const isFar = Math.abs(ours - published) > allowed
    expect(isFar).toBe(why !== undefined)
  })
})
