// The lists that say which names are sure: they stand in order, have no name in common, and each does what it is for.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { everyday, OF_OTHER_LANDS } from '../../scripts/build/doubtful-names.ts'
import { readCorrections } from '../../scripts/build/pronunciations.ts'
import { testPhonics, testSpelling } from '../lexicon-for-tests.ts'

const readTable = (name: string) =>
  readCorrections(readFileSync(new URL(`../../src/phonics/data/${name}`, import.meta.url), 'utf8'))
const ofClasses = readTable('class-names.tsv')

const american = () => testPhonics('general-american')
const withCapital = (word: string): string => `${word[0]?.toUpperCase()}${word.slice(1)}`
const isSure = (word: string): boolean => american().read(withCapital(word)).unsure === undefined

describe('lists of names', () => {
  it.each([
    ['of every day', [...everyday]],
    ['of other lands', [...OF_OTHER_LANDS]],
    ['of classes', ofClasses.map(({ word }) => word)],
  ])('%s stand in order, each once', (_, words) => {
    expect(words).toEqual([...new Set(words)].sort())
  })

  it('have no name in common', () => {
    const corrected = new Set(readTable('corrections.tsv').map(({ word }) => word))
    expect([...OF_OTHER_LANDS].filter((word) => everyday.has(word))).toEqual([])
    expect(ofClasses.filter(({ word }) => corrected.has(word) || OF_OTHER_LANDS.has(word))).toEqual([])
  })

  it('of every day and of classes are sure', () => {
    expect([...everyday, ...ofClasses.map(({ word }) => word)].filter((word) => !isSure(word))).toEqual([])
  })

  it('of other lands are not sure', () => {
    expect([...OF_OTHER_LANDS].filter(isSure)).toEqual([])
  })

  it('of classes are said as their rows say', () => {
    const wrong = ofClasses.filter(({ word, transcriptions }) => {
      const said = testSpelling()
        .spell(word)
        .cuttings[0]?.raw.units.flatMap(({ phones }) => phones)
      return said?.join(' ') !== transcriptions[0]?.phones.join(' ')
    })
    expect(wrong.map(({ word }) => word)).toEqual([])
  })
})
