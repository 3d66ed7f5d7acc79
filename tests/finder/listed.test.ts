// What must be listed at some step, what comes first, and what last. The words are the project's own judgement.

import { describe, expect, it } from 'vitest'
import { readEveryday, readGrownUp } from '../../scripts/build/everyday.ts'
import { findLeading, findWords } from '../../src/finder/index.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { testPool, testSequence, testTable, testWords } from './sources.ts'

const sequence = testSequence('series')
const last = sequence.steps.at(-1)?.id ?? ''
const all = findWords(testPool(sequence, last), {}).words.map(({ word }) => word)

describe('words that the lists behind us lose', () => {
  it.each(
    'mom van anyone anything chocolate cannot gran papa ouch woof oink fang beaver welcome else unless hooray policemen pianos transferred reeds bumpy crunchy'.split(
      ' ',
    ),
  )('%s is listed as soon as it can be read', (word) => {
    expect(testTable().rowOf(word)).toBeGreaterThan(-1)
    const isReadable = findReadableAt(testPhonics(sequence.accent).read(word), sequence) !== undefined
    expect(all.includes(word)).toBe(isReadable)
  })

  it('has a table of them, sorted, and lists all that can be read', () => {
    const words = readEveryday().map(({ word }) => word)
    expect(words).toEqual([...new Set(words)].sort())
    expect(words.filter((word) => testTable().rowOf(word) < 0)).toEqual([])
  })

  it('lists what Britain calls maths and yoghurt there alone', () => {
    const england = testSequence('england')
    const british = findWords(testPool(england, england.steps.at(-1)?.id ?? ''), {}).words.map(({ word }) => word)
    expect(british).toEqual(expect.arrayContaining(['maths', 'ageing', 'yoghurt']))
    expect(british).not.toContain('math')
    expect(all).toContain('math')
    for (const word of ['maths', 'ageing', 'yoghurt']) expect(all).not.toContain(word)
  })

  it('lists names and days no more than before', () => {
    for (const word of ['sam', 'tom', 'monday', 'august', 'london', 'fbi']) expect(all, word).not.toContain(word)
  })
})

describe('what comes last', () => {
  it('lists made-up words and words of grown-ups after all that children know', () => {
    const place = (word: string): number => all.indexOf(word)
    const known = all.filter((word) => {
      if (testTable().rowOf(word) < 0) return false
      const { known, fit } = testWords().facts.factsAt(testTable().placeAt(testTable().rowOf(word)))
      return known >= 2 && fit
    })
    const lastKnown = Math.max(...known.map(place))
    for (const word of ['hugger', 'waver', 'attractive', 'aggressive']) {
      expect(place(word), word).toBeGreaterThan(lastKnown)
    }
  })

  it('keeps the table of grown-up words sorted and apart from those of children', () => {
    const words = [...readGrownUp()]
    expect(words).toEqual([...new Set(words)].sort())
    const everyday = new Set(readEveryday().map(({ word }) => word))
    expect(words.filter((word) => everyday.has(word))).toEqual([])
  })
})

describe('a plain list', () => {
  it.each(['blue-6', 'green-2', 'green-8', 'green-12'])(
    'of %s leads with what the step and the last ones bring',
    (step) => {
      const pool = testPool(sequence, step)
      const { words, more } = findLeading(pool, { count: 60 })
      const at = sequence.steps.findIndex(({ id }) => id === step)
      const stepOf = (id: string | null): number => sequence.steps.findIndex((one) => one.id === id)
      expect(words).toHaveLength(60)
      expect(more).toBe(true)
      expect(new Set(words.map(({ word }) => word)).size).toBe(60)
      expect(words.slice(0, 10).every(({ readableAt, facts }) => stepOf(readableAt) === at && facts.known >= 2)).toBe(
        true,
      )
      expect(words.slice(0, 40).every(({ readableAt }) => stepOf(readableAt) >= at - 2)).toBe(true)
      expect(words.slice(-15).some(({ readableAt }) => stepOf(readableAt) < at - 2)).toBe(true)
    },
  )

  it('holds the same words as before where all are asked for', () => {
    const pool = testPool(sequence, 'green-4')
    const [led, plain] = [findLeading(pool, {}), findWords(pool, {})].map(({ words }) => words.map(({ word }) => word))
    expect([...(led ?? [])].sort()).toEqual([...(plain ?? [])].sort())
  })
})
