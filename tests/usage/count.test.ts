import { describe, expect, it } from 'vitest'
import { findNewWords, toDifferentWords, toWordCounts } from '../../src/usage/count.ts'
import { toWordKey } from '../../src/verdict/index.ts'
import { toContext } from '../shelf/engine.ts'
import { DIFFERENT, FIVE_PAGES, PAGES, TIMES, TOTAL } from '../shelf/five-pages.ts'

describe('a book of five pages, counted by hand', () => {
  const context = toContext(FIVE_PAGES, 'pink-6')
  const figures = context.figures()

  it.each(PAGES.map((page, at) => [at + 1, page] as const))('page %i', (number, { newWords, ...counted }) => {
    expect(figures.pages[number - 1]).toMatchObject(counted)
    const found = findNewWords(context.count()).filter(({ word }) => word.page === number)
    expect(found.map(({ key }) => key)).toEqual(newWords)
  })

  it('the whole', () => {
    expect(figures.total).toMatchObject(TOTAL)
    expect(figures.different).toMatchObject(DIFFERENT)
    expect(Object.fromEntries(toWordCounts(context.count()))).toEqual(TIMES)
    expect(context.count().words).toBe(TOTAL.words)
    expect(toDifferentWords(context.count())).toHaveLength(DIFFERENT.words)
  })

  it('what earlier books have used is not new', () => {
    const earlier = new Set(['hat', 'the', 'tam'])
    const found = findNewWords(context.count(), earlier).map(({ key }) => key)
    expect(found).toEqual(Object.keys(TIMES).filter((word) => !earlier.has(word)))
  })
})

// Texas Education Agency, letter to administrators, 26 January 2000: "decodability" is the share of words that sound out by the
// letter-sound correspondences taught so far; "potential for accuracy" adds the words taught as sight words. California
// (ELA/ELD Framework, chapter 12, 2014) asks for at least 75-80 % of the first.
it('the two published definitions of the decodable share, on one page of twenty words', () => {
  const { total } = toContext(
    'The cat sat on a mat. Tam had a red hat. Ned got ten big figs. Meg fed ten ducks.',
    'pink-6',
  ).figures()
  expect(total).toMatchObject({ words: 20, decodable: 15, sight: 3, names: 0, unreadable: 2 })
  expect(total.decodableShare).toBe(0.75)
  expect(total.readableShare).toBe(0.9)
})

describe('what one word is', () => {
  it('letter case and apostrophes do not part words; other letters do', () => {
    expect(['The', 'THE', 'the'].map(toWordKey)).toEqual(['the', 'the', 'the'])
    expect(toWordKey('can’t')).toBe(toWordKey("can't"))
    expect(toWordKey('hat')).not.toBe(toWordKey('hats'))
  })

  it('numerals are no words; a word in foreign letters is one', () => {
    const count = toContext('Tam had 6 hats. A кот sat.', 'pink-6').count()
    expect(count.words).toBe(6)
    expect(count.uses.find(({ form }) => form === 'foreign')?.text).toBe('кот')
  })

  it('a name of several words is parted from the same word elsewhere, and counts as one different word', () => {
    const context = toContext('Old Ned sat. The old hat is bad.', 'pink-6', ['Old Ned'])
    const old = context.count().uses.filter(({ key }) => key === 'old')
    expect(old.map(({ isInName, times }) => [isInName, times])).toEqual([
      [true, 1],
      [false, 1],
    ])
    expect(toDifferentWords(context.count()).find(({ key }) => key === 'old')?.times).toBe(2)
  })
})
