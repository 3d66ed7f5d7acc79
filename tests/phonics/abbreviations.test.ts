// Abbreviations are not sounded out. Common practice, no source: they are read as the words they stand for, or by the
// names of their letters; little sounds such as `shh` are said as they are written.

import { expect, it } from 'vitest'
import { testSpelling } from '../lexicon-for-tests.ts'

const countPronunciations = (word: string): number => testSpelling().spell(word).cuttings.length

it.each(['mr', 'mrs', 'dr', 'st', 'tv', 'dvd', 'bbc', 'pm', 'ok', 'etc'])('%s has no pronunciation', (word) => {
  expect(countPronunciations(word)).toBe(0)
})

it.each(['shh', 'sh', 'hmm', 'mm', 'zzz', 'brr', 'grr', 'psst', 'tsk', 'pfft'])('%s has one', (word) => {
  expect(countPronunciations(word)).toBeGreaterThan(0)
})
