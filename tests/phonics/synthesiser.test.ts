// Southern British against an independent general-purpose synthesiser.

import { describe, expect, it } from 'vitest'
import { measureAccent, sayAll } from '../../scripts/accuracy/accent.ts'
import { readSynthesised } from '../../scripts/accuracy/synthesised.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

describe('against the synthesiser', () => {
  it('agrees on 95 % of the 5,000 most used words', { timeout: 180_000 }, async () => {
    const figures = await measureAccent(testPhonics('southern-british'))
    expect(figures.words).toBe(5000)
    expect(figures.agreed / figures.words).toBeGreaterThanOrEqual(0.95)
  })

  it('says what is kept of it in the data of the tests', { timeout: 60_000 }, async () => {
    const { words, said } = readSynthesised()
    const again = await sayAll(words.slice(0, 300))
    expect(again.map((one) => one.trim())).toEqual(said.slice(0, 300))
  })
})
