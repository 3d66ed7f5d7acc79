// The whole dictionary: how much of it aligned when the package was built, and how large the lexicon file is.

import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { openLexicon } from '../../src/phonics/lexicon/open.ts'
import { ROOT } from '../console.ts'

const LEXICON = join(ROOT, 'dist/lexicon.bin')

it('aligns 99.7 % of the ordinary entries and all of the 20,000 most used words', () => {
  const report = JSON.parse(readFileSync(join(ROOT, 'dist/lexicon-report.json'), 'utf8'))
  expect(report.entries).toBeGreaterThan(130_000)
  expect(report.share).toBeGreaterThanOrEqual(0.997)
  expect(report.missed).toEqual([])
  expect(report.words).toBe(openLexicon(readFileSync(LEXICON)).size)
})

// 2.7 MB before there were the model of look-alikes and the table of slips.
it('takes less than 3.1 MB', () => {
  expect(statSync(LEXICON).size).toBeLessThan(3_100_000)
})
