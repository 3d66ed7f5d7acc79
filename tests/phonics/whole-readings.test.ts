// Words with all that is said of them: stress, units with their kinds, and what is worn down. As the CMU Pronouncing Dictionary stresses them, the main
// mark before the syllable as a teacher cuts it; the rest is common practice, no source.

import { describe, expect, it } from 'vitest'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics, testSpelling } from '../lexicon-for-tests.ts'

const read = (word: string, accent: Accent = 'general-american') => testPhonics(accent).read(word)
const first = (word: string, accent?: Accent) => read(word, accent).pronunciations[0]

describe('where the marks of stress stand', () => {
  it.each([
    ['cat', 'kæt'],
    ['rabbit', 'ˈræbət'],
    ['giraffe', 'dʒəˈræf'],
    ['moustache', 'ˈmʌsˌtæʃ'],
    ['invigorate', 'ɪnˈvɪɡəˌreɪt'],
    ['interracial', 'ˌɪntəˈreɪʃəl'],
    ['bitterroot', 'ˈbɪtəˌruːt'],
    ['aardvark', 'ˈɑrdˌvɑrk'],
    ['unknown', 'ˌʌnˈnoʊn'],
    ['ice-cream', 'ˈaɪsˈkriːm'],
    ['tip-top', 'ˈtɪpˈtɑp'],
  ])('%s is %s', (word, ipa) => {
    expect(first(word)?.ipa).toBe(ipa)
  })

  it('on the vowel that Britain says in full', () => {
    expect(first('moustache', 'southern-british')?.ipa).toBe('məsˈtɑːʃ')
    expect(first('bitterroot', 'southern-british')?.ipa).toBe('ˈbɪtəˌruːt')
  })
})

describe('syllables of words with hyphens', () => {
  it.each([
    ['-cat-', ['cat']],
    ['--cat', ['cat']],
    ['cat--', ['cat']],
    ['--ice--cream--', ['ice', 'cream']],
    ['b-b-but', ['b-b-but']],
    ['rab-bit', ['rab', 'bit']],
  ])('%s', (word, syllables) => {
    expect(first(word)?.syllables).toEqual(syllables)
  })
})

describe('units', () => {
  it.each([
    ['hurry', { letters: 'rr', spans: [[2, 4]], sound: 'r', kind: 'correspondence', key: 'rr=r', vowel: false }],
    [
      'hurry',
      { letters: 'u', spans: [[1, 2]], sound: 'ʌ', kind: 'correspondence', key: 'u=ʌ', vowel: true, stress: 1 },
    ],
    ['forest', { letters: 'r', spans: [[2, 3]], sound: 'r', kind: 'correspondence', key: 'r=r', vowel: false }],
    ['fury', { letters: 'r', spans: [[2, 3]], sound: 'r', kind: 'correspondence', key: 'r=r', vowel: false }],
    [
      'fury',
      { letters: 'u', spans: [[1, 2]], sound: 'jʊə', kind: 'correspondence', key: 'u=juː', vowel: true, stress: 1 },
    ],
    [
      'scarce',
      { letters: 'ar', spans: [[2, 4]], sound: 'ɛə', kind: 'correspondence', key: 'ar=ɛə', vowel: true, stress: 1 },
    ],
    ["boys'", { letters: "'", spans: [[4, 5]], sound: '', kind: 'silent', key: "'=", vowel: false }],
    ["zub's", { letters: "'s", spans: [[3, 5]], sound: 'z', kind: 'inflection', key: "'s=z", vowel: false }],
    [
      'running',
      { letters: 'nn', base: 'n', spans: [[2, 4]], sound: 'n', kind: 'correspondence', key: 'n=n', vowel: false },
    ],
    [
      'laziness',
      { letters: 'i', base: 'y', spans: [[3, 4]], sound: 'iː', kind: 'correspondence', key: 'y=iː', vowel: true },
    ],
    [
      'bodies',
      { letters: 'ie', base: 'y', spans: [[3, 5]], sound: 'iː', kind: 'correspondence', key: 'y=iː', vowel: true },
    ],
  ])('of %s', (word, unit) => {
    expect(first(word, 'southern-british')?.units).toContainEqual(expect.objectContaining(unit))
  })

  // An r that opens the next syllable parts from its vowel, and no other: sc-ar-ce, but va-ry and fu-ry.
  it.each([
    ['scarce', 'ar=ɛr'],
    ['vary', 'a=eɪ'],
    ['vary', 'r=r'],
    ['fury', 'u=juː'],
    ['jury', 'u=uː'],
    ['stirred', 'ir=ɜr'],
    ['purr', 'ur=ɜr'],
    ['argument', 'u=juː'],
    ['handsome', 'o_e=ʌ'],
  ])('of %s in America: %s', (word, key) => {
    expect(first(word)?.units.map((unit) => unit.key)).toContain(key)
  })

  it('of a word have a base only where an ending changed their spelling', () => {
    expect(first('cats')?.units.some((unit) => 'base' in unit)).toBe(false)
    expect(first('ship')?.units.filter((unit) => 'stress' in unit)).toHaveLength(1)
    for (const word of ['laziness', 'happiness']) expect(first(word)?.units.some(({ base }) => base === 'y')).toBe(true)
    for (const word of ['cities', 'radios', 'igloos', 'minister', 'finish'])
      expect(first(word)?.units.some(({ letters, base }) => letters === 'i' && base === 'y')).toBe(false)
  })

  it('are worn down in words of more syllables than one, one vowel at a time', () => {
    const worn = (word: string) =>
      first(word)
        ?.units.filter(({ reduced }) => reduced)
        .map(({ letters }) => letters)
    expect(['the', 'a', 'was', 'usual', 'casual', 'genuine', 'table', 'sofa', 'wanted'].map(worn)).toEqual([
      [],
      [],
      [],
      ['a'],
      ['a'],
      [],
      [],
      ['a'],
      [],
    ])
  })
})

describe('what is known of a word', () => {
  it.each([
    ['dictionary', 'cat cats cat’s boys’ henhouse blankness tip-top yakking C-a-t B-but happiness'],
    ['guess', 'zub Zub’s zubs’ zubbed shhh brrr nooo looong zub-cat cat-zub thedog makeing xyz -- 123'],
  ])('%s: %s', (source, words) => {
    for (const word of words.split(' ')) expect([word, read(word).source]).toEqual([word, source])
  })

  it.each([
    ['makeing', 'making'],
    ['runing', 'running'],
    ['thedog', 'the dog'],
    ['happyer', 'happier'],
  ])('by %s is meant %s', (word, meant) => {
    expect(read(word)).toMatchObject({ source: 'guess', meant, pronunciations: [] })
  })

  it('says nothing of what does not hold', () => {
    expect(Object.keys(read('cat')).sort()).toEqual(['heteronym', 'pronunciations', 'source', 'word'])
    expect(read('cat').heteronym).toBe(false)
    expect(read('either').heteronym).toBe(false)
    expect(read('read').heteronym).toBe(true)
  })

  it('is listed just where it is in the dictionary, before it is read and after', () => {
    const { isListed } = testPhonics('general-american')
    const words =
      "cats cat's boys' henhouse blankness yakking zub zub's zubs' zubbed makeing thedog rivershop bagging baging".split(
        ' ',
      )
    const listed = [true, true, true, true, true, true, false, false, false, false, false, false, false, true, false]
    expect(words.map((word) => testSpelling().isListed(word))).toEqual(listed)
    for (const word of words) read(word)
    expect(words.map(isListed)).toEqual(listed)
    expect(words.map((word) => read(word).source === 'dictionary')).toEqual(listed)
  })
})
