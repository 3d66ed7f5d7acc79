import { describe, expect, it } from 'vitest'
import type { ThesaurusPart } from '../../src/words/thesaurus.ts'
import { openWordData } from '../../src/words/word-data.ts'
import { bytes, data, lexicon, words } from './small.ts'

const near = (word: string, part: ThesaurusPart): string[] =>
  data.thesaurus.near(lexicon.indexOf(word), part).map(({ index }) => lexicon.wordAt(index))
const costOf = (word: string, part: ThesaurusPart, other: string): number =>
  data.thesaurus.near(lexicon.indexOf(word), part).find(({ index }) => lexicon.wordAt(index) === other)?.cost ??
  Number.POSITIVE_INFINITY

// Expected relations: the trees of WordNet 3.1, read by eye.
describe('openThesaurus', () => {
  it('gives a synonym at no cost', () => {
    expect(costOf('large', 'adjective', 'big')).toBe(0)
    expect(near('large', 'adjective')[0]).toBe('big')
  })

  it('does not know the names that people are called', () => {
    expect(near('doctor', 'noun')).not.toContain('quack')
    expect(near('woman', 'noun')).not.toContain('doll')
    expect(near('woman', 'noun')).not.toContain('chick')
    expect(near('child', 'noun')).toContain('kid')
  })

  it('puts sisters before cousins', () => {
    expect(costOf('dog', 'noun', 'fox')).toBeLessThan(costOf('dog', 'noun', 'cat'))
    expect(costOf('dog', 'noun', 'cat')).toBeLessThan(costOf('dog', 'noun', 'horse'))
    expect(costOf('boat', 'noun', 'ship')).toBeLessThan(costOf('boat', 'noun', 'van'))
  })

  it('finds what is broader and what is narrower', () => {
    expect(near('boat', 'noun')).toContain('vessel')
    expect(near('boat', 'noun')).toContain('tug')
    expect(near('walk', 'verb')).toContain('run')
  })

  it('is symmetric for sisters', () => {
    expect(costOf('fox', 'noun', 'wolf')).toBeCloseTo(costOf('wolf', 'noun', 'fox'))
  })

  it('gives nothing for inflected forms, names and other parts of speech', () => {
    expect(near('boats', 'noun')).toEqual([])
    expect(near('pretty', 'noun')).toEqual([])
    expect(near('the', 'noun')).toEqual([])
    expect(data.thesaurus.near(-1, 'noun')).toEqual([])
  })

  it('never gives the word itself, and sorts by cost', () => {
    for (const word of ['dog', 'boat', 'tub', 'child', 'house']) {
      const found = data.thesaurus.near(lexicon.indexOf(word), 'noun')
      expect(found.map(({ index }) => index)).not.toContain(lexicon.indexOf(word))
      expect(found.map(({ cost }) => cost)).toEqual(found.map(({ cost }) => cost).toSorted((a, b) => a - b))
    }
  })

  it('gives up to a cost the same as without it, cut there', () => {
    for (const most of [0, 1, 2, 3])
      for (const part of ['noun', 'verb', 'adjective'] as const)
        for (const word of words.filter((_, at) => at % 40 === 0)) {
          const index = lexicon.indexOf(word)
          const all = data.thesaurus.near(index, part).filter(({ cost }) => cost <= most)
          expect(data.thesaurus.near(index, part, most)).toEqual(all)
        }
  })

  it('says so where the data is cut off', () => {
    expect(() => openWordData(bytes.subarray(0, bytes.length - 1))).toThrow(RangeError)
    expect(() => openWordData(bytes, words.length + 1)).toThrow('build the package again')
    expect(openWordData(bytes, words.length).facts.size).toBe(words.length)
  })
})

it('opens the same from a Buffer, as files are read', () => {
  const fromFile = openWordData(Buffer.from(bytes))
  const boat = lexicon.indexOf('boat')
  expect(fromFile.thesaurus.near(boat, 'noun')).toEqual(data.thesaurus.near(boat, 'noun'))
})
