import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findWords, openSheet } from '../../src/finder/index.ts'
import { shuffle, toUsefulness } from '../../src/finder/order.ts'
import { UNHELPFUL } from '../../src/finder/unhelpful.ts'
import { testPool, testSequence, testTable, testWords } from './sources.ts'

const sequence = testSequence('series')
const words = (step: string, query: Parameters<typeof findWords>[1]): string[] =>
  findWords(testPool(sequence, step), query).words.map(({ word }) => word)

describe('orders', () => {
  it('shuffles to the same items, the same way for the same seed', () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), fc.nat(), (items, seed) => {
        expect(shuffle(items, seed).sort((a, b) => a - b)).toEqual([...items].sort((a, b) => a - b))
        expect(shuffle(items, seed)).toEqual(shuffle(items, seed))
      }),
    )
  })

  it('gives other words for another seed, known words first', () => {
    const [one, other] = [1, 2].map((seed) => words('pink-4', { order: 'shuffled', seed, count: 12 }))
    expect(one).not.toEqual(other)
    expect(one).toEqual(words('pink-4', { order: 'shuffled', seed: 1, count: 12 }))
    for (const word of [...(one ?? []), ...(other ?? [])]) {
      expect(testWords().facts.factsAt(testTable().placeAt(testTable().rowOf(word))).known).toBeGreaterThan(1)
    }
  })

  it('puts the most useful of them in order of the alphabet', () => {
    const useful = words('pink-5', { count: 30 })
    expect(words('pink-5', { count: 30, order: 'alphabetical' })).toEqual([...useful].sort())
  })

  it('begins with what small children know', () => {
    const known = findWords(testPool(sequence, 'pink-2'), { count: 20 }).words
    expect(known.every(({ facts, isSight, kind }) => facts.known === 3 && (!isSight || kind === 'little'))).toBe(true)
  })

  it('has the commonest little words first, by heart or not', () => {
    const first = words('green-14', { count: 60 })
    for (const word of ['the', 'I', 'to', 'a', 'and', 'is', 'was', 'he', 'she', 'you', 'of', 'they'])
      expect(first, word).toContain(word)
  })

  it('puts on the sheet what no sentence can do without', () => {
    const sheet = openSheet(testPool(sequence, 'green-14'), { base: true })(44).flatMap((part) => part.words)
    const listed = sheet.map(({ word }) => word)
    for (const word of [
      'the',
      'I',
      'to',
      'a',
      'and',
      'is',
      'was',
      'he',
      'she',
      'you',
      'of',
      'they',
      'said',
      'sat',
      'ran',
      'got',
      'went',
      'met',
    ])
      expect(listed, word).toContain(word)
    expect(sheet.find(({ word }) => word === 'the')?.isSight).toBe(false)
    expect(sheet.find(({ word }) => word === 'said')?.isSight).toBe(true)
  })

  it('says whether there are more', () => {
    expect(findWords(testPool(sequence, 'pink-1'), { count: 5 }).more).toBe(true)
    expect(findWords(testPool(sequence, 'pink-1')).more).toBe(false)
  })

  it('takes base forms before others that are as well known', () => {
    const facts = testWords().facts.factsAt(testTable().placeAt(testTable().rowOf('cat')))
    expect(toUsefulness(facts, false)).toBeLessThan(toUsefulness({ ...facts, inflection: 'plural' }, false))
  })
})

describe('the table of unhelpful words', () => {
  it('is sorted, without twins, each with a reason', () => {
    const listed = UNHELPFUL.map(([word]) => word as string)
    expect(listed).toEqual([...new Set(listed)].sort())
    expect(UNHELPFUL.every(([, reason]) => reason.length > 3)).toBe(true)
  })

  it('keeps its words out of every list', () => {
    expect(UNHELPFUL.filter(([word]) => testTable().rowOf(word) >= 0)).toEqual([])
  })
})
