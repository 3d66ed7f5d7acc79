// Spellings of Britain, from memory of common usage: no source.

import { describe, expect, it } from 'vitest'
import { isForeignSpelling, toBritish } from '../../src/phonics/british-spellings.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

describe('what Britain writes otherwise', () => {
  it.each([
    ['flavour', 'flavor'],
    ['flavoured', 'flavored'],
    ['litre', 'liter'],
    ['metres', 'meters'],
    ['pyjamas', 'pajamas'],
    ['organised', 'organized'],
    ['organise', 'organize'],
    ['neighbours', 'neighbors'],
    ['favourite', 'favorite'],
    ['travelled', 'traveled'],
    ['grey', 'gray'],
    ['plough', 'plow'],
    ['moustache', 'mustache'],
  ])('%s is known, and said as %s', (british, american) => {
    for (const accent of ['general-american', 'southern-british'] as const) {
      const { source, pronunciations } = testPhonics(accent).read(british)
      expect([british, source]).toEqual([british, 'dictionary'])
      const plain = (ipa: string) => ipa.replace(/[ˈˌː]/g, '')
      expect(pronunciations.map(({ ipa }) => plain(ipa))).toContain(
        plain(testPhonics(accent).read(american).pronunciations[0]?.ipa ?? ''),
      )
    }
  })

  it.each(['prize', 'size', 'seize', 'capsize', 'dozen', 'lizard', 'meter', 'story'])('%s is written so', (word) => {
    expect(toBritish(word)).toBeUndefined()
  })

  it('a list has what its land writes', () => {
    const isForeign = (word: string) => [
      isForeignSpelling(word, 'general-american'),
      isForeignSpelling(word, 'southern-british'),
    ]
    for (const word of ['math', 'mom', 'color', 'center', 'realize']) expect(isForeign(word)).toEqual([false, true])
    for (const word of ['maths', 'mum', 'colour', 'centre']) expect(isForeign(word)).toEqual([true, false])
    for (const word of ['cat', 'story', 'meter', 'got']) expect(isForeign(word)).toEqual([false, false])
  })
})
