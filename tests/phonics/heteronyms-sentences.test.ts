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

  // Judged by hand before the program saw them, but those of WordNet, whose part of speech judges. From all but `modernLater`, `mixed`,
  // those of WordNet and of the encyclopedia the model has learned too. What holds today must not fall: how many are right, how many
  // are wrong, and how many of all need no tagger.
  it('are settled as well as ever, draw by draw', async () => {
    const measured = await measureHeteronyms()
    const held = [
      ['dev', 170, 0, 169],
      ['heldOut', 85, 0, 83],
      ['tuning', 156, 0, 153],
      ['unseen', 158, 0, 157],
      ['third', 196, 0, 194],
      ['fourth', 93, 0, 91],
      ['public', 146, 0, 146],
      ['publicUnseen', 150, 0, 150],
      ['publicLater', 111, 0, 112],
      ['nineteen', 309, 0, 306],
      ['smallChildren', 324, 0, 323],
      ['eleven', 178, 0, 176],
      ['fifteen', 311, 0, 310],
      ['stretches', 165, 0, 165],
      ['moreStretches', 323, 0, 322],
      ['lastStretches', 213, 0, 211],
      // Modern stories for small children: at first look 280 were right and 5 wrong; then faults were mended by class.
      ['modern', 302, 0, 301],
      ['fortyTwo', 419, 0, 415],
      ['modernLater', 297, 0, 294],
      ['mixed', 309, 0, 305],
      ['final', 469, 0, 465],
      ['blindSecond', 317, 0, 314],
      ['blindThird', 207, 0, 198],
      ['blindFourth', 199, 0, 193],
      ['blindFifth', 589, 0, 580],
      ['blindSixth', 564, 0, 553],
      ['wordNet', 310, 2, 299],
      // Five of the wrong are `upset` as an adjective, which the set gives the sound of the noun, and dictionaries that of the verb.
      ['wikipedia', 292, 9, 283],
    ] as const
    for (const [name, right, wrong, withoutTagger] of held) {
      const shares = measured[name]
      const toCount = (share: number): number => Math.round(share * shares.sentences)
      expect(toCount(shares.right), name).toBeGreaterThanOrEqual(right)
      expect(toCount(shares.wrong), name).toBeLessThanOrEqual(wrong)
      expect(toCount(shares.withoutTagger), name).toBeGreaterThanOrEqual(withoutTagger)
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
