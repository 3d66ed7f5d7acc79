// Words made of a known one are said as it is said. What a word is made of is told by the dictionary (any that parts `sunnily` as
// sunny and -ly, `growly` as growl and -y); sounds as dictionaries of American English give them, from memory.

import { describe, expect, it } from 'vitest'
import { testPhonics } from '../lexicon-for-tests.ts'

const american = testPhonics('general-american')
const british = testPhonics('southern-british')
const say = (word: string, phonics = american): string =>
  phonics.read(word).pronunciations[0]?.ipa.replace(/[ˈˌ]/g, '') ?? ''

describe('a word with an ending', () => {
  it.each([
    // y is i before -ly, and the word is no name with -ly
    ['sunnily', 'sʌnəliː'],
    ['prettily', 'prɪtəliː'],
    ['cosily', 'koʊzəliː'],
    ['tidily', 'taɪdəliː'],
    ['lazily', 'leɪzəliː'],
    ['merriment', 'mɛrɪmənt'],
    // l and y, not -ly
    ['growly', 'ɡraʊliː'],
    ['swirly', 'swɜrliː'],
    // le and y
    ['crumbly', 'krʌmbliː'],
    ['tingly', 'tɪŋɡliː'],
    ['dangly', 'dæŋɡliː'],
    ['jangly', 'dʒæŋɡliː'],
    ['tangly', 'tæŋɡliː'],
    ['spangly', 'spæŋɡliː'],
    // and as before
    ['blankly', 'blæŋkliː'],
    ['happily', 'hæpəliː'],
    ['kindly', 'kaɪndliː'],
  ])('%s is said %s', (word, ipa) => {
    expect(american.read(word).source).toBe('dictionary')
    expect(say(word)).toBe(ipa)
  })

  // Entries of the dictionary that are said otherwise than the word they are made of.
  it.each([
    ['jagged', 'dʒæɡɪd'],
    ['bogies', 'boʊɡiːz'],
    ['herder', 'hɜrdər'],
    ['relearned', 'riːlɜrnd'],
    ['toucher', 'tʌtʃər'],
    ['reused', 'riːjuːzd'],
    ['reunited', 'riːjuːnaɪtɪd'],
    ['thunked', 'θʌŋkt'],
    ['blackbird', 'blækbɜrd'],
    ['writhed', 'raɪðd'],
  ])('%s is said %s', (word, ipa) => {
    expect(say(word)).toBe(ipa)
  })
})

describe('a short vowel before a last double r', () => {
  it('is none: star and starry, her and err have one vowel', () => {
    const toKeys = (word: string) => british.read(word).pronunciations[0]?.units.map(({ key }) => key)
    expect(toKeys('starry')).toEqual(['s=s', 't=t', 'ar=ɑː', 'y=iː'])
    expect(toKeys('err')).toEqual(['er=ɜː'])
    expect(say('erred', british)).toBe('ɜːd')
    expect(say('starry')).toBe('stɑriː')
  })

  it.each([
    ['devour', 'dɪvaʊə'],
    ['devoured', 'dɪvaʊəd'],
    ['camembert', 'kæməmbɛə'],
    ["they're", 'ðɛə'],
    ['sour', 'saʊə'],
  ])('leaves a schwa where its r is silent in Britain: %s is said %s', (word, ipa) => {
    expect(say(word, british)).toBe(ipa)
  })
})
