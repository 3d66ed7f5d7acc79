// Endings, owners, contractions, compounds and hyphens. The rules of spelling are those of English Appendix 1
// (Department for Education 2013), years 1 and 2; the tables are common practice, no source.

import { describe, expect, it } from 'vitest'
import type { Unit } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const read = (word: string) => testPhonics('southern-british').read(word)
const show = ({ letters, base, sound, kind }: Unit): string =>
  `${letters}${base === undefined ? '' : `<${base}`}=${sound}${kind === 'inflection' ? '+' : ''}`
const units = (word: string): string => read(word).pronunciations[0]?.units.map(show).join(' ') ?? ''

describe('endings of known words', () => {
  it.each([
    ['cats', 'c=k a=æ t=t s=s+'],
    ['dogs', 'd=d o=ɒ g=ɡ s=z+'],
    ['buses', 'b=b u=ʌ s=s es=ɪz+'],
    ['wishes', 'w=w i=ɪ sh=ʃ es=ɪz+'],
    ['cakes', 'c=k a_e=eɪ k=k s=s+'],
    ['goes', 'g=ɡ oe=əʊ s=z+'],
    ['cries', 'c=k r=r ie<y=aɪ s=z+'],
    ['jumped', 'j=dʒ u=ʌ m=m p=p ed=t+'],
    ['rained', 'r=r ai=eɪ n=n ed=d+'],
    ['hunted', 'h=h u=ʌ n=n t=t ed=ɪd+'],
    ['hopped', 'h=h o=ɒ pp<p=p ed=t+'],
    ['hoped', 'h=h o<o_e=əʊ p=p ed=t+'],
    ['cried', 'c=k r=r ie<y=aɪ d=d+'],
    ['running', 'r=r u=ʌ nn<n=n ing=ɪŋ+'],
    ['baking', 'b=b a<a_e=eɪ k=k ing=ɪŋ+'],
    ['bigger', 'b=b i=ɪ gg<g=ɡ er=ə+'],
    ['biggest', 'b=b i=ɪ gg<g=ɡ est=ɪst+'],
    ['teachers', 't=t ea=iː ch=tʃ er=ə+ s=z+'],
  ])('%s is %s', (word, expected) => {
    expect(units(word)).toBe(expected)
  })

  it.each([
    'seed',
    'feed',
    'need',
    'bed',
    'red',
    'sing',
    'ring',
    'bus',
    'this',
    'was',
    'its',
    'her',
    'best',
    'nest',
    'summer',
  ])('%s has none', (word) => {
    expect(read(word).pronunciations[0]?.units.some(({ kind }) => kind === 'inflection')).toBe(false)
  })
})

describe('endings of words that nobody knows', () => {
  it.each([
    ['zubbed', 'z=z u=ʌ bb<b=b ed=d+'],
    ['zubbing', 'z=z u=ʌ bb<b=b ing=ɪŋ+'],
    ['zubs', 'z=z u=ʌ b=b s=z+'],
    ['snibes', 's=s n=n i_e=aɪ b=b s=z+'],
    ['snibing', 's=s n=n i<i_e=aɪ b=b ing=ɪŋ+'],
  ])('%s is %s', (word, expected) => {
    expect(read(word).source).toBe('guess')
    expect(units(word)).toBe(expected)
  })

  it('draws no split grapheme over a doubled letter', () => {
    for (const { units: drawn } of read('zubbed').pronunciations)
      expect(drawn.map(({ letters }) => letters).join()).not.toContain('_')
  })
})

describe('owners', () => {
  it.each([
    ["cat's", "c=k a=æ t=t 's=s+"],
    ["dog's", "d=d o=ɒ g=ɡ 's=z+"],
    ["fox's", "f=f o=ɒ x=ks 's=ɪz+"],
    ["Zub's", "z=z u=ʌ b=b 's=z+"],
    ['Zub’s', "z=z u=ʌ b=b 's=z+"],
  ])('%s is %s', (word, expected) => {
    expect(units(word)).toBe(expected)
  })

  it("leaves the mark of the boys' unsaid", () => {
    expect(read("boys'").pronunciations[0]?.ipa).toBe('bɔɪz')
  })
})

describe('contractions', () => {
  it.each([
    ["I'm", 'aɪm'],
    ["I'll", 'aɪl'],
    ["I've", 'aɪv'],
    ["I'd", 'aɪd'],
    ["it's", 'ɪts'],
    ["he's", 'hiːz'],
    ["she's", 'ʃiːz'],
    ["that's", 'ðæts'],
    ["let's", 'lɛts'],
    ["can't", 'kɑːnt'],
    ["don't", 'dəʊnt'],
    ["won't", 'wəʊnt'],
    ["isn't", 'ˈɪzənt'],
    ["didn't", 'ˈdɪdənt'],
    ["wasn't", 'ˈwɒzənt'],
    ["you're", 'jʊə'],
    ["they're", 'ðɛə'],
    ["we've", 'wiːv'],
    ["he'd", 'hiːd'],
  ])('%s says %s', (word, ipa) => {
    const found = read(word)
    expect(found.source).toBe('dictionary')
    expect(found.pronunciations.map((pronunciation) => pronunciation.ipa)).toContain(ipa)
  })
})

describe('compounds and hyphens', () => {
  it.each([
    ['henhouse', 'h=h e=ɛ n=n h=h ou=aʊ se=s'],
    ['duckpond', 'd=d u=ʌ ck=k p=p o=ɒ n=n d=d'],
    ['tip-top', 't=t i=ɪ p=p t=t o=ɒ p=p'],
    ['Zub-dog', 'z=z u=ʌ b=b d=d o=ɒ g=ɡ'],
  ])('%s is %s', (word, expected) => {
    expect(units(word)).toBe(expected)
  })

  it('is a guess where a part is one', () => {
    expect(read('Zub-dog').source).toBe('guess')
    expect(read('tip-top').source).toBe('dictionary')
  })
})
