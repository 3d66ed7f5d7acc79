// Endings, owners, contractions, compounds and hyphens. The rules of spelling are those of English Appendix 1
// (Department for Education 2013), years 1 and 2; the tables are common practice, no source.

import { describe, expect, it } from 'vitest'
import { findInflections } from '../../src/phonics/inflect.ts'
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
    ['paddler', 'p=p a=æ dd=d l<le=əl er=ə+'],
    ['puzzler', 'p=p u=ʌ zz=z l<le=əl er=ə+'],
    ['puzzlers', 'p=p u=ʌ zz=z l<le=əl er=ə+ s=z+'],
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
    'sting',
    'spring',
    'bred',
    'sled',
    'per',
    'glass',
    'dress',
    'wing',
    'forest',
  ])('%s has none', (word) => {
    expect(read(word).pronunciations[0]?.units.some(({ kind }) => kind === 'inflection')).toBe(false)
  })
})

// Its example words for each rule with the words that they are made of: -s and -es, -ing, -ed, -er and -est to a word that needs no change, that
// ends in y, in e, or in a single consonant after a short vowel. The slip is the ending put on without the change.
describe('the words of England’s curriculum with an ending', () => {
  it.each(
    (
      'catches catch catchs, boxes box boxs, wishes wish wishs, buzzes buzz buzzs, classes class classs, rushes rush rushs, ' +
      'hoping hope hopeing, hoped hope hopeed, hiker hike hikeer, nicest nice niceest, patting pat pating, patted pat pated, ' +
      'humming hum huming, dropping drop droping, dropped drop droped, saddest sad sadest, fatter fat fater, fattest fat fatest, ' +
      'runner run runer, flies fly flys, tries try trys, replies reply replys, copies copy copys, babies baby babys, carries carry carrys, ' +
      'copied copy copyed, copier copy copyer, happier happy happyer, happiest happy happyest, cried cry cryed, replied reply replyed, ' +
      // Common practice: a u after q is no vowel, and the e of a pair of vowels stays or goes.
      'quitting quit quiting, blurring blur bluring, hugged hug huged, biggest big bigest, queuing queue queueing, rescuing rescue rescueing'
    )
      .split(', ')
      .map((one) => one.split(' ') as [string, string, string]),
  )('%s is %s with an ending, and %s a slip of it', (word, stem, slip) => {
    expect(findInflections(word).map((one) => one.stem)).toContain(stem)
    expect(read(slip)).toMatchObject({ pronunciations: [], meant: word })
  })

  it.each(
    (
      'hunting hunted hunter buzzing buzzed buzzer jumping jumped jumper grander grandest fresher freshest quicker quickest ' +
      'skiing seeing being playing played boys keys fixed mixing cows toes dyeing'
    ).split(' '),
  )('%s is right as it is', (word) => {
    expect(read(word).meant).toBeUndefined()
    expect(read(word).pronunciations.length).toBeGreaterThan(0)
  })

  it.each(['seing', 'beed', 'goed'])('%s is no slip of a word of one letter', (word) => {
    expect(read(word).meant ?? '').not.toMatch(/^(?:sing|bed|god)$/)
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
    ['tradesmen', 't=t r=r a_e=eɪ d=d s=z m=m e=ə n=n'],
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
