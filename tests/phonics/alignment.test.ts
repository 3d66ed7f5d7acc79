// The whole dictionary: how much of it aligns. Builds the lexicon anew, which takes some fifteen seconds.

import { expect, it } from 'vitest'
import { buildLexicon } from '../../scripts/build/lexicon.ts'

it('aligns 99.7 % of the ordinary entries and all of the 20,000 most used words, in less than 2.7 MB', {
  timeout: 180_000,
}, () => {
  const { bytes, report } = buildLexicon()
  expect(report.entries).toBeGreaterThan(130_000)
  expect(report.share).toBeGreaterThanOrEqual(0.997)
  expect(report.missed).toEqual([])
  expect(bytes.length).toBeLessThan(2_700_000)
})
