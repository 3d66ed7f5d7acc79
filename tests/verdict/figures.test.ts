// Figures: two published definitions of the decodable share on one page, and different words.

import { describe, expect, it } from 'vitest'
import { type CountedWord, toDifferentFigures, toFigures } from '../../src/verdict/figures.ts'
import type { Verdict } from '../../src/verdict/types.ts'

const toWord = (text: string, kind: Verdict['kind'], form: CountedWord['form'] = 'word'): CountedWord => ({
  text,
  form,
  verdict: { readable: kind !== 'unreadable', kind, reasons: [], pronunciation: undefined, guessed: false },
})

/** `cat:d the:s Zub:n night:u` */
const toWords = (page: string): readonly CountedWord[] =>
  page.split(' ').map((item) => {
    const [text = '', mark = ''] = item.split(':')
    const kinds = { d: 'decodable', s: 'sight', n: 'name', u: 'unreadable' } as const
    return toWord(text, kinds[mark as keyof typeof kinds])
  })

// Source: Texas Education Agency, letter to administrators of 26 January 2000. It sets apart "decodability" (words of
// taught letter-sound correspondences only) and "potential for accuracy" (words that students can identify because they
// have been taught the correspondences or the words as sight words). The page is our own.
const PAGE =
  'A:s big:d pig:d sat:d in:d the:s mud:d Meg:d fed:d it:d a:s bun:d night:u Sid:d had:d ten:d hens:u Tam:d ran:d up:d'

describe('a page of twenty words: 15 by taught correspondences, 3 taught sight words, 2 others', () => {
  it('is 75 % decodable and 90 % readable', () => {
    expect(toFigures(toWords(PAGE))).toEqual({
      words: 20,
      decodable: 15,
      sight: 3,
      names: 0,
      unreadable: 2,
      decodableShare: 0.75,
      readableShare: 0.9,
    })
  })

  it('has 19 different words, as `A` and `a` are one', () => {
    expect(toDifferentFigures(toWords(PAGE))).toEqual({
      words: 19,
      decodable: 15,
      sight: 2,
      names: 0,
      unreadable: 2,
      decodableShare: 15 / 19,
      readableShare: 17 / 19,
    })
  })
})

describe('what is counted', () => {
  it('names are readable, not decodable', () => {
    const figures = toFigures(toWords('Roy:n sat:d'))
    expect(figures).toMatchObject({ names: 1, decodableShare: 0.5, readableShare: 1 })
  })

  it('numerals are no words', () => {
    expect(toFigures([toWord('6', 'unreadable', 'numeral'), toWord('hen', 'decodable')]).words).toBe(1)
  })

  it('a word in other letters cannot be read', () => {
    expect(toFigures([toWord('дом', 'decodable', 'foreign')])).toMatchObject({ words: 1, unreadable: 1 })
  })

  it('a page without words has nothing unreadable', () => {
    expect(toFigures([])).toMatchObject({ words: 0, decodableShare: 1, readableShare: 1 })
  })

  it('a word judged in two ways counts once, as the harder', () => {
    expect(toDifferentFigures(toWords('Will:n will:u will:u'))).toMatchObject({ words: 1, unreadable: 1 })
    expect(toDifferentFigures(toWords('read:u read:d'))).toMatchObject({ words: 1, unreadable: 1 })
  })

  it.each([
    ['d n', 'names'],
    ['n d', 'names'],
    ['d s', 'sight'],
    ['n s', 'sight'],
    ['s n', 'sight'],
    ['s u', 'unreadable'],
    ['u n', 'unreadable'],
  ])('of two verdicts on one word (%s) the harder counts: %s', (marks, counted) => {
    const words = toWords(
      marks
        .split(' ')
        .map((mark) => `will:${mark}`)
        .join(' '),
    )
    expect(toDifferentFigures(words)).toMatchObject({ words: 1, [counted]: 1 })
  })

  it('a word counts as often as it runs, and once among the different words', () => {
    const words = [{ ...toWord('hen', 'decodable'), times: 3 }, toWord('night', 'unreadable')]
    expect(toFigures(words)).toMatchObject({ words: 4, decodable: 3, unreadable: 1, decodableShare: 0.75 })
    expect(toDifferentFigures(words)).toMatchObject({ words: 2, decodable: 1 })
  })

  it('a word goes by the key that it brings', () => {
    const words = [
      { ...toWord('hen', 'decodable'), key: 'a' },
      { ...toWord('hen', 'decodable'), key: 'b' },
    ]
    expect(toDifferentFigures(words).words).toBe(2)
  })

  it('curly and straight apostrophes are one word', () => {
    expect(toDifferentFigures(toWords("can't:d can’t:d")).words).toBe(1)
  })
})
