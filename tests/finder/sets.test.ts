import { describe, expect, it } from 'vitest'
import {
  type FoundWord,
  findWords,
  proposeBox,
  proposeMixed,
  proposePairs,
  type WordQuery,
} from '../../src/finder/index.ts'
import { testPool, testSequence, testSpellingOf } from './sources.ts'

const sequence = testSequence('series')
const VOWELS = ['a', 'e', 'i', 'o', 'u'] as const

function objects(step: string, query: WordQuery = {}): readonly FoundWord[] {
  return findWords(testPool(sequence, step), { ...query, object: true, syllables: { from: 1, to: 1 } }).words.filter(
    ({ facts }) => facts.known > 0,
  )
}

const toWords = (found: readonly FoundWord[]): string[] => found.map(({ word }) => word)
const countFirsts = (words: readonly string[]): number => new Set(words.map((word) => word[0])).size
/** Which of b, d, p and q stand in the words. */
const mixedUp = (words: readonly string[]): string[] => [...'bdpq'].filter((letter) => words.join('').includes(letter))

describe('a box for one vowel', () => {
  it.each(VOWELS.flatMap((vowel) => [4, 6, 8].map((count) => ({ vowel, count }))))(
    '$count words for $vowel',
    ({ vowel, count }) => {
      const all = objects('pink-5', { vowel: [testSpellingOf(vowel, sequence)] })
      const { words, relaxed } = proposeBox(all, count, sequence.lookAlikes)
      const texts = toWords(words)
      const mostFirsts = [...'bdpq'].map((kept) =>
        countFirsts(toWords(all).filter((word) => mixedUp([word]).every((letter) => letter === kept))),
      )
      expect(countFirsts(texts)).toBe(Math.min(count, Math.max(...mostFirsts)))
      expect(texts.length).toBe(relaxed.includes('fewer') ? texts.length : count)
      expect(texts.length).toBeGreaterThan(3)
      expect(mixedUp(texts).length).toBeLessThan(2)
      if (!relaxed.includes('first')) expect(countFirsts(texts)).toBe(texts.length)
      expect(texts.every((word) => word.includes(vowel))).toBe(true)
    },
  )

  it('says when there are too few', () => {
    const { words, relaxed } = proposeBox(
      objects('pink-1', { vowel: [testSpellingOf('a', sequence)] }),
      50,
      sequence.lookAlikes,
    )
    expect(words.length).toBeLessThan(50)
    expect(relaxed).toContain('fewer')
  })
})

describe('pairs that contrast two sounds', () => {
  it.each([
    ['a', 'u'],
    ['i', 'e'],
    ['b', 'p'],
    ['o', 'u'],
  ])('%s and %s', (one, other) => {
    const tests = [one, other].map((text) => {
      const spelling = testSpellingOf(text, sequence)
      if ('letters' in spelling || !spelling[0]) throw new Error('one spelling is needed')
      return spelling[0]
    })
    const [isOne, isOther] = tests
    if (!isOne || !isOther) throw new Error('two tests are needed')
    const words = findWords(testPool(sequence, 'pink-5'), { syllables: { from: 1, to: 1 } }).words.filter(
      ({ isSight }) => !isSight,
    )
    const pairs = proposePairs(words, isOne, isOther, 8)
    expect(pairs.length).toBeGreaterThan(4)
    expect(new Set(pairs.flatMap(toWords)).size).toBe(pairs.length * 2)
    for (const [left, right] of pairs) {
      const [a, b] = [left.pronunciation.units, right.pronunciation.units]
      expect(a.length).toBe(b.length)
      const differ = a.flatMap((unit, at) => (unit.key === b[at]?.key ? [] : [at]))
      expect(differ).toHaveLength(1)
      const at = differ[0] ?? 0
      expect(a[at] && isOne(a[at]) && b[at] && isOther(b[at])).toBe(true)
    }
  })

  it('offers no pair again in another form', () => {
    const words = findWords(testPool(sequence, 'pink-6'), { syllables: { from: 1, to: 1 } }).words
    const pairs = proposePairs(
      words,
      ({ key }) => key === 'a=æ',
      ({ key }) => key === 'e=ɛ',
      60,
    ).map((pair) => toWords(pair).join(' '))
    const plain = pairs.map((pair) => pair.replaceAll(/s\b/g, ''))
    expect(plain).toEqual([...new Set(plain)])
    expect(pairs).toContain('man men')
    expect(pairs).not.toContain('mans mens')
  })

  it('finds the pairs that every teacher knows', () => {
    const words = findWords(testPool(sequence, 'pink-5'), { syllables: { from: 1, to: 1 } }).words
    const pairs = proposePairs(
      words,
      ({ key }) => key === 'a=æ',
      ({ key }) => key === 'u=ʌ',
      40,
    ).map((pair) => toWords(pair).join(' '))
    // Common practice, no source.
    expect(pairs).toEqual(expect.arrayContaining(['cap cup', 'cat cut', 'ran run']))
  })
})

describe('a box of mixed vowels', () => {
  it.each([5, 10, 15])('balances the vowels in %i words', (count) => {
    const vowels = ['a=æ', 'e=ɛ', 'i=ɪ', 'o=ɑ', 'u=ʌ']
    const vowelOf = ({ pronunciation }: FoundWord) => pronunciation.units.find(({ vowel }) => vowel)?.key
    const { words } = proposeMixed(objects('pink-5'), vowels, vowelOf, count, sequence.lookAlikes)
    expect(words).toHaveLength(count)
    for (const vowel of vowels) expect(words.filter((found) => vowelOf(found) === vowel)).toHaveLength(count / 5)
    expect(mixedUp(toWords(words)).length).toBeLessThan(2)
  })
})
