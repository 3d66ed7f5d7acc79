// England's curriculum, English Appendix 1 (Department for Education 2013): its example words and its notes.

import { describe, expect, it } from 'vitest'
import { isRowMet, readCurriculum } from '../../scripts/accuracy/curriculum.ts'
import { frequencyRank } from '../../scripts/build/frequency.ts'
import type { Accent, Unit } from '../../src/phonics/types.ts'
import { testPhonics, testSpelling } from '../lexicon-for-tests.ts'

const units = (accent: Accent, word: string): readonly Unit[] =>
  testPhonics(accent).read(word).pronunciations[0]?.units ?? []
const keys = (accent: Accent, word: string): readonly string[] => units(accent, word).map(({ key }) => key)

describe('example words', () => {
  const rows = readCurriculum()

  it('has all 309', () => {
    expect(rows).toHaveLength(309)
  })

  it.each(rows.map((row) => [row.word, row.grapheme, row] as const))('%s has %s', (_, __, row) => {
    expect(isRowMet(row, testSpelling())).toBe(true)
  })

  it('knows a row that is not met', () => {
    expect(isRowMet({ word: 'bread', grapheme: 'ea', sounds: ['IY'] }, testSpelling())).toBe(false)
    expect(isRowMet({ word: 'cake', grapheme: 'a', sounds: ['EY'] }, testSpelling())).toBe(false)
  })
})

describe('notes of the source', () => {
  it.each(['past', 'last', 'fast', 'path', 'bath'])('%s has a long a in Southern British only', (word) => {
    expect(keys('southern-british', word)).toContain('a=ɑː')
    expect(keys('general-american', word)).toContain('a=æ')
  })

  it('children has the i of sit, child has not', () => {
    expect(keys('southern-british', 'children')).toContain('i=ɪ')
    expect(keys('southern-british', 'child')).toContain('i=aɪ')
  })

  it('only great, break and steak among common words have ea as /eɪ/', () => {
    const common = [...frequencyRank].filter(([word, rank]) => rank < 5000 && word.includes('ea')).map(([word]) => word)
    const said = common.filter((word) => keys('southern-british', word).includes('ea=eɪ'))
    const stems = new Set(said.map((word) => word.replace(/(fast|s|er|est|ing|ly)$/, '')))
    expect([...stems].sort()).toEqual(['break', 'great', 'steak'])
  })

  it('read has two sounds', () => {
    const said = testPhonics('southern-british')
      .read('read')
      .pronunciations.map(({ ipa }) => ipa)
    expect(said.sort()).toEqual(['riːd', 'rɛd'])
  })
})
