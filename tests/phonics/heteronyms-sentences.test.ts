// The accuracy of the choice, over sentences written before the program and, for a third of them, never tuned on.

import { beforeAll, describe, expect, it } from 'vitest'
import { measureHeteronyms, readHeteronymCases, toResult } from '../../scripts/accuracy/heteronyms.ts'
import { heteronyms, table } from '../../scripts/build/heteronyms/table.ts'
import { loadTagger, type Tagger } from '../../src/phonics/heteronyms/tagger.ts'

let tagger: Tagger
beforeAll(async () => {
  tagger = await loadTagger()
})

describe('sentences with heteronyms', () => {
  it('are enough, over enough words, with both pronunciations of the common ones', async () => {
    const cases = await readHeteronymCases()
    expect(cases.length).toBeGreaterThanOrEqual(120)
    expect(new Set(cases.map(({ word }) => word)).size).toBeGreaterThanOrEqual(45)
    for (const { word, form, sentence } of cases) {
      expect(
        table.find(word)?.forms.map((item) => item.form),
        sentence,
      ).toContain(form)
    }
    for (const word of [
      'read',
      'live',
      'wind',
      'tear',
      'use',
      'close',
      'lead',
      'bow',
      'row',
      'wound',
      'present',
      'record',
    ]) {
      expect(new Set(cases.filter((item) => item.word === word).map(({ form }) => form)).size, word).toBe(2)
    }
  })

  it('are settled rightly, and hardly ever wrongly', async () => {
    const { dev, heldOut } = await measureHeteronyms()
    expect(heldOut.sentences).toBeGreaterThanOrEqual(80)
    for (const shares of [dev, heldOut]) {
      expect(shares.right + shares.wrong + shares.unsettled).toBeCloseTo(1)
      expect(shares.right).toBeGreaterThanOrEqual(0.9)
      expect(shares.wrong).toBeLessThanOrEqual(0.02)
      expect(shares.withoutTagger).toBeGreaterThanOrEqual(0.8)
    }
  })

  it('settle no example of the table wrongly', () => {
    const wrong = heteronyms.flatMap(({ word, forms }) =>
      forms.flatMap(({ form, example }) => {
        const { settlement } = toResult({ sentence: example, word, form, set: 'dev' }, tagger)
        return settlement.kind === 'settled' && settlement.form !== form
          ? [`${example} (${word}: ${settlement.form})`]
          : []
      }),
    )
    expect(wrong).toEqual([])
  })
})
