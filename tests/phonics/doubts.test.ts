// Entries of the dictionary that a machine doubted: each is judged, and each verdict has its reason.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { findFamilyDoubts } from '../../scripts/accuracy/family-doubts.ts'
import { readJudgedDoubts } from '../../scripts/accuracy/judged-doubts.ts'
import { readCorrections } from '../../scripts/build/pronunciations.ts'
import { testLexicon, testPhonics, testSpelling } from '../lexicon-for-tests.ts'

const judged = readJudgedDoubts()
const corrections = readCorrections(
  readFileSync(new URL('../../src/phonics/data/corrections.tsv', import.meta.url), 'utf8'),
)

describe('entries of the dictionary that were doubted', () => {
  it('stand in order, each once', () => {
    expect(judged.map(({ word }) => word)).toEqual([...new Set(judged.map(({ word }) => word))].sort())
  })

  it('are corrected with a reason, or right with a reason', () => {
    const reasons = new Map(corrections.map(({ word, reason }) => [word, reason]))
    const without = judged.filter(({ word, isRight, reason }) => (isRight ? reason : (reasons.get(word) ?? '')) === '')
    expect(without).toEqual([])
  })

  it('are all judged that their family doubts today', () => {
    const known = new Set(judged.map(({ word }) => word))
    const engine = { lexicon: testLexicon(), spelling: testSpelling() }
    expect(
      findFamilyDoubts(engine)
        .map(({ word }) => word)
        .filter((word) => !known.has(word)),
    ).toEqual([])
  })

  it.each([
    ['accompaniment', 'əˈkʌmpəniːmənt'],
    ['cyclones', 'ˈsaɪˌkloʊnz'],
    ['synapse', 'ˈsɪˌnæps'],
    ['earrings', 'ˈɪrˌrɪŋz'],
    ['africa', 'ˈæfrəkə'],
  ])('%s is said %s', (word, ipa) => {
    expect(testPhonics('general-american').read(word).pronunciations[0]?.ipa.replaceAll(/[ˈˌ]/g, '')).toBe(
      ipa.replaceAll(/[ˈˌ]/g, ''),
    )
  })
})
