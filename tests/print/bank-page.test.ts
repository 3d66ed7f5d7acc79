// The word bank on paper: one page of A4 and of US Letter at every step of every built-in sequence.

import { expect, it } from 'vitest'
import { makeBank } from '../../src/cli/words/bank.ts'
import { fitsBank, layBank, PAPERS } from '../../src/print/index.ts'
import { toBankText, type WordBank } from '../../src/report/bank.ts'
import { SEQUENCES, testPool, testSequence, testWords } from '../finder/sources.ts'
import { testLetters } from './fonts.ts'

const letters = testLetters()
const CASES = SEQUENCES.flatMap((name) => Object.values(PAPERS).map((paper) => [name, paper.name, paper] as const))

it.each(CASES)('at every step of %s, %s', (name, _, paper) => {
  const sequence = testSequence(name)
  const ask = { paper, letters, cut: 'none', size: 'usual', backs: 'none', pageWords: undefined } as const
  const toPage = (bank: WordBank) => ({ title: 'A word bank', ...toBankText(bank) })
  for (const { id } of sequence.steps) {
    const pool = testPool(sequence, id)
    const fits = (bank: WordBank): boolean => fitsBank(toPage(bank), ask)
    const bank = makeBank({ query: {}, pool, own: [], names: testWords().names(), fits })
    const laid = layBank(toPage(bank), ask)
    expect(laid?.sheets, id).toHaveLength(1)
    const texts =
      laid?.sheets.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item] : []))) ?? []
    const own = texts.filter(({ ink }) => ink === 'black')
    const lowest = Math.max(...own.map(({ baseline }) => baseline))
    expect(lowest, id).toBeLessThan(paper.height - 13)
    for (const { text, x, size, face } of own) {
      expect(x + letters.widthOf(text.trimEnd(), size, face), `${id}: ${text}`).toBeLessThan(paper.width - 8)
    }
    // What is cut fills its page.
    if (bank.parts.some(({ more }) => more)) expect(lowest, id).toBeGreaterThan(paper.height - 60)
  }
})
