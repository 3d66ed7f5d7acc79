// Words drawn out on paper, and what they stand for. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { findSqueezed, squeezeNoise, stretch } from '../../src/phonics/stretched.ts'

describe('a word with a long run', () => {
  it.each(
    (
      'nooo no noo, looong long loong, mooo moo mo, booo boo bo, cooo coo co, wooo woo wo, baaa baa ba, zaaa za zaa, booom boom bom, ' +
      'seee see se, treee tree tre, weee we wee, heee he hee, beee be bee, meee me mee, sheee she shee, teeeth teeth teth, ' +
      'hisss hiss his, alll all al, offf off of, buzzz buzz buz, yesss yes yess, soooo so soo, goooal gooal goal, sooon soon son, stooop stoop stop, ' +
      'toyyy toy toyy, elll el ell, ' +
      'hellll hel hell, bellll bel bell, ohhh oh oh, ahhhh ah ah, yummm yum yumm, zooo zo zoo, fffree ffree free, iiii i ii'
    )
      .split(', ')
      .map((one) => one.split(' ') as [string, string, string]),
  )('%s may be %s or %s', (word, first, second) => {
    expect(findSqueezed(word).map((one) => one.word)).toEqual([first, second])
  })

  it.each(['no', 'boo', 'see', 'hiss', 'banana', 'bookkeeper', ''])('%s has none', (word) => {
    expect(findSqueezed(word)).toEqual([])
  })
})

it.each([
  ['zzzz', 'zz'],
  ['brrr', 'brr'],
  ['shhh', 'sh'],
  ['shh', 'sh'],
  ['hmmm', 'hmm'],
  ['psst', 'psst'],
  ['grr', 'grr'],
])('%s is the noise %s', (word, noise) => {
  expect(squeezeNoise(word).word).toBe(noise)
})

describe('the letters of the short word in the long one', () => {
  const unit = (letters: string, ...spans: [number, number][]) =>
    ({ letters, spans, phones: ['X'], kind: 'correspondence' }) as const

  it('each begin where their run begins', () => {
    const [long, loong] = findSqueezed('looong')
    expect(loong).toEqual({ word: 'loong', starts: [0, 1, 2, 4, 5, 6] })
    expect(long).toEqual({ word: 'long', starts: [0, 1, 4, 5, 6] })
    expect(squeezeNoise('shhh')).toEqual({ word: 'sh', starts: [0, 1, 4] })
    expect(findSqueezed('booom')[0]).toEqual({ word: 'boom', starts: [0, 1, 2, 4, 5] })
  })

  it('a unit takes the whole of its run and remembers its own letters', () => {
    const raw = { units: [unit('l', [0, 1]), unit('o', [1, 2]), unit('ng', [2, 4])] }
    expect(stretch(raw, 'looong', { word: 'long', starts: [0, 1, 4, 5, 6] }).units).toEqual([
      unit('l', [0, 1]),
      { ...unit('ooo', [1, 4]), base: 'o' },
      unit('ng', [4, 6]),
    ])
  })

  it('so does one whose first letter is drawn out, or whose e at the end is', () => {
    const cake = { units: [unit('c', [0, 1]), unit('a_e', [1, 2], [3, 4]), unit('k', [2, 3])] }
    const [, word] = findSqueezed('caaakeee')
    expect(word?.starts).toEqual([0, 1, 4, 5, 8])
    expect(stretch(cake, 'caaakeee', { word: 'cake', starts: [0, 1, 4, 5, 8] }).units).toEqual([
      unit('c', [0, 1]),
      { ...unit('aaa_eee', [1, 4], [5, 8]), base: 'a_e' },
      unit('k', [4, 5]),
    ])
    expect(stretch(cake, 'cakeee', { word: 'cake', starts: [0, 1, 2, 3, 6] }).units[1]).toEqual({
      ...unit('a_eee', [1, 2], [3, 6]),
      base: 'a_e',
    })
  })

  it('keeps the base that an ending gave', () => {
    const raw = { units: [{ ...unit('nn', [0, 2]), base: 'n' }] }
    expect(stretch(raw, 'nnnn', { word: 'nn', starts: [0, 1, 4] }).units[0]?.base).toBe('n')
  })
})
