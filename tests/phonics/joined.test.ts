// Words made of others, over a small dictionary of its own: run together, put together, or with an ending that leaves them as they are. Common
// practice, no source.

import { describe, expect, it } from 'vitest'
import { findSeam } from '../../src/phonics/compounds.ts'
import type { Cutting } from '../../src/phonics/cutting.ts'
import { findDerived } from '../../src/phonics/derived.ts'
import type { Lexicon } from '../../src/phonics/lexicon/open.ts'
import { findRunTogether } from '../../src/phonics/run-together.ts'

/** How each word goes into compounds: first part, last part; 0 not, 1 with strong parts, 2 with any, 3 with so many that nobody runs it together. */
const PARTS: Readonly<Record<string, readonly [first: number, last: number]>> = {
  box: [1, 2],
  cat: [1, 1],
  dog: [2, 1],
  fat: [1, 2],
  hat: [2, 2],
  her: [0, 2],
  hot: [2, 0],
  hen: [2, 2],
  house: [1, 3],
  ox: [2, 2],
  pot: [1, 1],
  shop: [1, 3],
  stand: [0, 2],
}
const WORDS = Object.keys(PARTS)
const lexicon = {
  indexOf: (word: string) => WORDS.indexOf(word),
  parts: new Map(Object.values(PARTS).map(([first, last], at) => [at, first * 4 + last])),
} as unknown as Lexicon

describe('two words run together', () => {
  it.each([
    ['thedog', 'the dog'],
    ['theyhat', 'they hat'],
    ['wasfat', 'was fat'],
    ['withdog', 'with dog'],
    ['yourhat', 'your hat'],
    ['andhen', 'and hen'],
    ['catand', 'cat and'],
    ['catthe', 'cat the'],
    ['catwas', 'cat was'],
    ['catwith', 'cat with'],
    ['catyou', 'cat you'],
    ['catyour', 'cat your'],
    ['theand', undefined],
    ['dogcat', undefined],
    ['thezub', undefined],
    ['zubthe', undefined],
    ['youdog', undefined],
    ['thedo', undefined],
    ['the', undefined],
    ['theo', undefined],
    ['', undefined],
  ])('%s is %s', (word, meant) => {
    expect(findRunTogether(word, lexicon)).toBe(meant)
  })
})

describe('two words put together', () => {
  it.each<[string, number | undefined, string]>([
    ['henbox', 3, 'each goes with any'],
    ['dogcat', 3, 'one goes with any, the other with strong ones'],
    ['catbox', 3, 'the same the other way round'],
    ['catpot', undefined, 'neither is strong'],
    ['hotpot', 3, 'hot begins many'],
    ['cathot', undefined, 'hot ends none'],
    ['herhat', undefined, 'her begins none'],
    ['henzub', undefined, 'zub is no word'],
    ['zubhen', undefined, 'zub is no word'],
    ['hershop', undefined, 'her begins none, whatever shop ends'],
    ['oxhen', undefined, 'a part of two letters'],
    ['henox', undefined, 'a part of two letters'],
    ['hathouse', 3, 'a pair of letters between two of the strongest kind'],
    ['hatstand', 3, 'st may part'],
    ['hen', undefined, 'one word'],
    ['henhe', undefined, 'too short'],
  ])('%s parts at %s: %s', (word, at) => {
    expect(findSeam(word, lexicon)?.at).toBe(at)
  })

  it.each([
    ['hotshop', true],
    ['catshop', false],
    ['hotbox', false],
    ['hathouse', false],
  ])('%s is surely one word: %s', (word, isSure) => {
    expect(findSeam(word, lexicon)).toEqual({ at: 3, isSure })
  })

  it('tears a pair of letters only between two of the strongest kind', () => {
    expect(findSeam('hathen', lexicon)).toEqual({ at: 3, isSure: false })
    expect(findSeam('cathen', lexicon)).toBeUndefined()
  })
})

describe('an ending that leaves its word as it is', () => {
  const cutting = (word: string): Cutting => ({
    raw: { units: [{ letters: word, spans: [[0, word.length]], phones: ['K'], kind: 'correspondence' }] },
    stem: word,
  })
  const find = (word: string, ...stems: string[]): string =>
    findDerived(word, (stem) => (stems.includes(stem) ? [cutting(stem)] : []))
      .map(({ raw }) =>
        raw.units
          .map(
            ({ letters, spans, phones, stress, kind }) =>
              `${letters}${spans.map((span) => span.join('-')).join()}=${phones.join('+')}${stress ?? ''}${kind === 'correspondence' ? '' : '!'}`,
          )
          .join(' '),
      )
      .join(' | ')

  it.each([
    ['hatful', 'hat', 'hat0-3=K f3-4=F u4-5=AH0 l5-6=L'],
    ['hatless', 'hat', 'hat0-3=K l3-4=L e4-5=AH0 ss5-7=S'],
    ['blankly', 'blank', 'blank0-5=K l5-6=L y6-7=IY0'],
    ['blankness', 'blank', 'blank0-5=K n5-6=N e6-7=AH0 ss7-9=S'],
    ['shutly', 'shut', 'shut0-4=K l4-5=L y5-6=IY0'],
    ['hatly', 'hat', ''],
    ['goless', 'go', ''],
    ['hatfulx', 'hat', ''],
    ['zubful', 'hat', ''],
    ['hating', 'hat', ''],
    ['hayness', 'hay', 'hay0-3=K n3-4=N e4-5=AH0 ss5-7=S'],
    ['skiness', 'ski', ''],
  ])('%s of %s: %s', (word, stem, expected) => {
    expect(find(word, stem)).toBe(expected)
  })

  it('has an i for the y at the end of its word', () => {
    const units = [
      { letters: 'ic', spans: [[0, 2]], phones: ['K'], kind: 'correspondence' },
      { letters: 'y', spans: [[2, 3]], phones: ['IY'], kind: 'correspondence', stress: 0 },
    ] as const
    const icy = (stem: string) => (stem === 'icy' ? [{ raw: { units }, stem }] : [])
    const said = findDerived('iciness', icy)[0]?.raw.units.slice(0, 3)
    expect(said).toEqual([
      units[0],
      { ...units[1], letters: 'i', base: 'y' },
      { letters: 'n', spans: [[3, 4]], phones: ['N'], kind: 'correspondence' },
    ])
    expect(findDerived('iciless', icy)[0]?.raw.units[1]).toEqual({ ...units[1], letters: 'i', base: 'y' })
  })
})
