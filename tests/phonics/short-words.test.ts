// Short words that look regular: source of the verdicts is the project's own judgement, word by word.

import { describe, expect, it } from 'vitest'
import { measureShortWords, readShortWords } from '../../scripts/accuracy/short-words.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

describe('short words', () => {
  it('holds 250 different words', () => {
    expect(new Set(readShortWords().map(({ word }) => word)).size).toBe(250)
  })

  it.each(['general-american', 'southern-british'] as const)('judges each as by hand in %s', (accent) => {
    expect(measureShortWords(testPhonics(accent)).wrong).toEqual([])
  })

  // Common practice, no source.
  it.each([
    ['us', 'ʌs'],
    ['good', 'ɡʊd'],
    ['am', 'æm'],
    ['an', 'æn'],
    ['it', 'ɪt'],
  ])('reads %s as %s and in no other way', (word, ipa) => {
    expect(
      testPhonics('southern-british')
        .read(word)
        .pronunciations.map((pronunciation) => pronunciation.ipa),
    ).toEqual([ipa])
  })

  it('never reads a word as the names of its letters', () => {
    for (const word of ['us', 'am', 'it', 'as', 'or', 'pa']) {
      for (const { units } of testPhonics('general-american').read(word).pronunciations) {
        expect(
          units.filter((unit) => unit.vowel),
          word,
        ).toHaveLength(1)
      }
    }
  })

  it('takes /bɪkɒz/ for because', () => {
    const said = testPhonics('southern-british')
      .read('because')
      .pronunciations.map(({ ipa }) => ipa)
    expect(said.some((ipa) => /^bɪˈkɒz$/.test(ipa))).toBe(true)
  })
})
