// Accents word by word, and Southern British against an independent general-purpose synthesiser.

import { describe, expect, it } from 'vitest'
import { compareAccent } from '../../scripts/accuracy/accent.ts'
import { readSynthesised } from '../../scripts/accuracy/synthesised.ts'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

it('Southern British agrees with the synthesiser on as many words as ever', () => {
  const { words, said } = readSynthesised()
  const figures = compareAccent(testPhonics('southern-british'), words, said)
  expect(figures.words).toBe(3000)
  expect(figures.agreed, figures.differing.map(({ word }) => word).join(' ')).toBeGreaterThanOrEqual(2860)
})

// Source: Wells, Accents of English (1982), lexical sets, from memory.
describe('lexical sets', () => {
  const first = (accent: Accent, word: string) => testPhonics(accent).read(word).pronunciations[0]?.ipa

  it.each([
    ['LOT', 'hot', 'hɑt', 'hɒt'],
    ['CLOTH', 'dog', 'dɔɡ', 'dɒɡ'],
    ['THOUGHT', 'saw', 'sɔ', 'sɔː'],
    ['BATH', 'path', 'pæθ', 'pɑːθ'],
    ['BATH', 'laugh', 'læf', 'lɑːf'],
    ['TRAP', 'cat', 'kæt', 'kæt'],
    ['START', 'car', 'kɑr', 'kɑː'],
    ['NORTH', 'for', 'fɔr', 'fɔː'],
    ['NURSE', 'bird', 'bɜrd', 'bɜːd'],
    ['NEAR', 'near', 'nɪr', 'nɪə'],
    ['SQUARE', 'hair', 'hɛr', 'hɛə'],
    ['GOAT', 'boat', 'boʊt', 'bəʊt'],
    ['GOOSE, yod kept', 'new', 'nuː', 'njuː'],
    ['CURE, yod kept', 'during', 'ˈdʊrɪŋ', 'ˈdjʊərɪŋ'],
    ['LETTER', 'winter', 'ˈwɪntər', 'ˈwɪntə'],
  ])('%s: %s', (_, word, american, british) => {
    expect(first('general-american', word)).toBe(american)
    expect(first('southern-british', word)).toBe(british)
  })

  // The words by which Wells shows each set, and its vowel in both accents; before a vowel the r of the set is said.
  it.each([
    ['KIT', 'ship sick bridge milk myth busy', 'ɪ', 'ɪ'],
    ['DRESS', 'step neck edge shelf friend ready', 'ɛ', 'ɛ'],
    ['TRAP', 'tap back badge scalp hand cancel', 'æ', 'æ'],
    ['LOT', 'stop sock dodge romp possible quality', 'ɑ', 'ɒ'],
    ['STRUT', 'cup suck budge pulse trunk blood', 'ʌ', 'ʌ'],
    ['FOOT', 'put bush full good look wolf', 'ʊ', 'ʊ'],
    ['BATH', 'staff brass ask dance sample calf', 'æ', 'ɑː'],
    ['CLOTH', 'cough broth cross long', 'ɔf?', 'ɒf?'],
    ['NURSE', 'hurt lurk urge burst jerk term', 'ɜr', 'ɜː'],
    ['FLEECE', 'creep speak leave feel key people', 'iː', 'iː'],
    ['FACE', 'tape cake raid veil steak day', 'eɪ', 'eɪ'],
    ['PALM', 'psalm father bra spa lager', 'ɑ', 'ɑː'],
    ['THOUGHT', 'taught sauce hawk jaw broad', 'ɔ', 'ɔː'],
    ['GOAT', 'soap joke home know so roll', 'oʊ', 'əʊ'],
    ['GOOSE', 'loop shoot tomb mute huge view', 'j?uː', 'j?uː'],
    ['PRICE', 'ripe write arrive high try buy', 'aɪ', 'aɪ'],
    ['CHOICE', 'adroit noise join toy royal', 'ɔɪ', 'ɔɪ'],
    ['MOUTH', 'out house loud count crowd cow', 'aʊ', 'aʊ'],
    ['NEAR', 'beer sincere fear beard serum', 'ɪr?', 'ɪə'],
    ['SQUARE', 'care fair pear where scarce vary', 'ɛr?', 'ɛə'],
    ['START', 'far sharp bark carve farm heart', 'ɑr', 'ɑː'],
    ['NORTH', 'for war short scorch born warm', 'ɔr', 'ɔː'],
    ['FORCE', 'four wore sport porch borne story', 'ɔr', 'ɔːr?'],
    ['CURE', 'poor tourist pure plural jury', 'j?ʊr?', 'j?ʊər?'],
  ])('%s: %s', (_, words, american, british) => {
    for (const [accent, vowel] of [
      ['general-american', american],
      ['southern-british', british],
    ] as const)
      for (const word of words.split(' ')) {
        const units = testPhonics(accent).read(word).pronunciations[0]?.units ?? []
        expect(units.find((unit) => unit.stress === 1)?.sound, `${accent} ${word}`).toMatch(new RegExp(`^${vowel}$`))
      }
  })

  // As dictionaries of Southern British English give them (Wells, Longman Pronunciation Dictionary), from memory. Which of ɪ and ə a
  // weak vowel is depends on who wrote the dictionary.
  const loose = (ipa: string): string => ipa.replace(/ɪ(?!ə)/g, 'ə')

  it.each(
    (
      'again əɡeɪn, against əɡeɪnst, been biːn, borough bʌrə, clerk klɑːk, data deɪtə, derby dɑːbiː, docile dəʊsaɪl, ' +
      'dynasty dɪnəstiː, either aɪðə, neither naɪðə, envelope ɛnvələʊp, era ɪərə, figure fɪɡə, figures fɪɡəz, fragile frædʒaɪl, from frɒm, ' +
      'futile fjuːtaɪl, garage ɡærɑːʒ, herb hɜːb, hostile hɒstaɪl, leisure lɛʒə, lever liːvə, lieutenant lɛftɛnənt, missile mɪsaɪl, ' +
      'mobile məʊbaɪl, moustache məstɑːʃ, mustache məstɑːʃ, of ɒv, patriot pætriːət, privacy prɪvəsiː, process prəʊsɛs, progress prəʊɡrɛs, ' +
      'project prɒdʒɛkt, route ruːt, shone ʃɒn, sterile stɛraɪl, tomato təmɑːtəʊ, vase vɑːz, was wɒz, what wɒt, whatever wɒtɛvə, ' +
      'somewhat sʌmwɒt, wrath rɒθ, yogurt jɒɡət, zebra zɛbrə, wander wɒndə, want wɒnt, everybody ɛvriːbɒdiː, anybody ɛniːbɒdiː, ' +
      'somebody sʌmbɒdiː, nobody nəʊbɒdiː, without wɪðaʊt, water wɔːtə, underwater ʌndəwɔːtə, waterfall wɔːtəfɔːl, launch lɔːntʃ, ' +
      "father fɑːðə, yacht jɒt, whatsoever wɒtsəʊɛvə, buoy bɔɪ, thorough θʌrə, wasn't wɒzənt, what's wɒts, " +
      // The rules, one by one.
      'wall wɔːl, wallet wɒlɪt, swallow swɒləʊ, talk tɔːk, salt sɔːlt, tall tɔːl, calm kɑːm, wasp wɒsp, swan swɒn, squash skwɒʃ, ' +
      'tune tjuːn, new njuː, duty djuːtiː, student stjuːdənt, button bʌtən, chew tʃuː, blue bluː, ' +
      'carry kæriː, marry mæriː, charity tʃærɪtiː, parent pɛərənt, various vɛəriːəs, area ɛəriːə, sarah sɛərə, chariot tʃæriːət, ' +
      'hurry hʌriː, worry wʌriː, courage kʌrɪdʒ, squirrel skwɪrəl, furry fɜːriː, stirring stɜːrɪŋ, sirup sɪrəp, ' +
      'forest fɒrɪst, orange ɒrɪndʒ, sorry sɒriː, porridge pɒrɪdʒ, tomorrow təmɒrəʊ, because bɪkɒz, sausage sɒsɪdʒ, ' +
      'very vɛriː, merry mɛriː, hero hɪərəʊ, zero zɪərəʊ, fire faɪə, tower taʊə, flower flaʊə, player pleɪə, lawyer lɔːjə, ' +
      'near nɪə, nearer nɪərə, hear hɪə, hearing hɪərɪŋ, hair hɛə, hairy hɛəriː, star stɑː, starry stɑːriː, door dɔː, cure kjʊə, ' +
      "they're ðɛə, you're jʊə, we're wɪə, can't kɑːnt, bath bɑːθ, dancing dɑːnsɪŋ, gasped ɡɑːspt, " +
      'lastly lɑːstliː, vastly vɑːstliː, laughter lɑːftə, classroom klɑːsruːm, aunt ɑːnt, gas ɡæs, lass læs, mass mæs, ceremony sɛrɪməniː, library laɪbrəriː, ordinary ɔːdənəriː'
    )
      .split(', ')
      .map((one) => one.split(' ') as [string, string]),
  )('%s is said %s in Southern British', (word, ipa) => {
    const said = testPhonics('southern-british')
      .read(word)
      .pronunciations.map((pronunciation) => loose(pronunciation.ipa.replace(/[ˈˌ]/g, '')))
    expect(said).toContain(loose(ipa))
  })

  it.each(
    'anybody somebody nobody from was what of whatever somewhat yacht again against been either neither clerk era figure tomato vase'.split(
      ' ',
    ),
  )('%s is said in no other way', (word) => {
    const said = testPhonics('southern-british')
      .read(word)
      .pronunciations.map(({ units }) => units.map(({ sound }) => sound).join(' '))
    expect(new Set(said.map((sounds) => sounds.replace(/[ɪə]/g, 'ə'))).size).toBe(1)
  })

  // An r that is said before a vowel is that of the next syllable, so that the vowel is taught with the words that end in it.
  it.each([
    ['story', 'or=ɔː'],
    ['furry', 'ur=ɜː'],
    ['stirring', 'ir=ɜː'],
    ['hearing', 'ear=ɪə'],
    ['hairy', 'air=ɛə'],
    ['touring', 'our=ʊə'],
    ['boring', 'ore=ɔː'],
    ['nearer', 'ear=ɪə'],
    ['flowery', 'er=ə'],
    ['during', 'u=juː'],
    ['hero', 'e=iː'],
    ['mirror', 'rr=r'],
    ['red', 'r=r'],
    ['car', 'ar=ɑː'],
    ['sister', 'er=ə'],
    ['forest', 'o=ɒ'],
    ['forest', 'r=r'],
  ])('%s has %s', (word, key) => {
    expect(
      testPhonics('southern-british')
        .read(word)
        .pronunciations[0]?.units.map((unit) => unit.key),
    ).toContain(key)
  })

  it('says r before a vowel only', () => {
    expect(first('southern-british', 'carry')).toBe('ˈkæriː')
    expect(first('southern-british', 'story')).toBe('ˈstɔːriː')
    expect(first('southern-british', 'farm')).toBe('fɑːm')
  })

  it('asks no more than the letter r of an r that is not said', () => {
    const unit = testPhonics('southern-british').read('dinosaur').pronunciations[0]?.units.at(-1)
    expect(unit).toMatchObject({ letters: 'r', sound: '', kind: 'silent', key: 'r=r' })
  })
})

// Common practice, no source.
describe('sounds taught as one in America', () => {
  const keys = (word: string) =>
    testPhonics('general-american')
      .read(word)
      .pronunciations[0]?.units.map(({ key }) => key)

  it.each([
    ['dog', 'o=ɑ'],
    ['sister', 'er=ɜr'],
    ['hear', 'ear=ɪr'],
    ['carry', 'a=æ'],
    ['hero', 'e=iː'],
    ['zero', 'e=iː'],
    ['carrot', 'a=æ'],
    ['marry', 'a=æ'],
    ['parrot', 'a=æ'],
    ['arrow', 'a=æ'],
    ['mirror', 'i=ɪ'],
    ['spirit', 'i=ɪ'],
    ['merry', 'e=ɛ'],
    ['ferry', 'e=ɛ'],
    ['near', 'ear=ɪr'],
    ['deer', 'eer=ɪr'],
    ['her', 'er=ɜr'],
    ['haunt', 'au=ɔ'],
    ['saw', 'aw=ɔ'],
    ['caught', 'augh=ɔ'],
    ['bought', 'ough=ɔ'],
    ['long', 'o=ɑ'],
    ['gone', 'o_e=ɑ'],
  ])('%s has %s', (word, key) => {
    expect(keys(word)).toContain(key)
  })

  it.each(['usual', 'visual', 'casual', 'gradualism'])('%s has no glide of its own behind its u', (word) => {
    const unit = testPhonics('general-american')
      .read(word)
      .pronunciations[0]?.units.findLast(({ letters }) => letters === 'u')
    expect(unit?.sound).toMatch(/^j?uː$/)
  })

  it('does not take won, son or ton for the o of hot', () => {
    for (const word of ['won', 'son', 'ton']) expect(keys(word)).toContain('o=ʌ')
  })
})

// The vowels that teachers read out in full. Common practice, no source.
describe('reduced vowels', () => {
  it.each([
    ['rabbit', 'i'],
    ['sofa', 'a'],
    ['pencil', 'i'],
    ['chicken', 'e'],
    ['basket', 'e'],
    ['about', 'a'],
    ['lemon', 'o'],
    ['circus', 'u'],
  ])('%s has a reduced %s in both accents', (word, letter) => {
    for (const accent of ['general-american', 'southern-british'] as const) {
      const reduced = testPhonics(accent)
        .read(word)
        .pronunciations[0]?.units.filter((unit) => unit.reduced)
      expect(
        reduced?.map(({ letters }) => letters),
        accent,
      ).toEqual([letter])
    }
  })

  it.each(['cat', 'wanted', 'ship', 'happy', 'winter', 'puppy'])('%s has none', (word) => {
    for (const accent of ['general-american', 'southern-british'] as const) {
      expect(
        testPhonics(accent)
          .read(word)
          .pronunciations[0]?.units.some((unit) => unit.reduced),
        accent,
      ).toBe(false)
    }
  })
})

// Source: both are given by the Oxford and the Cambridge dictionaries, from memory.
it('ate is said in two ways in Britain and in one in America', () => {
  const ways = (accent: Accent) =>
    testPhonics(accent)
      .read('ate')
      .pronunciations.map(({ ipa }) => ipa)
  expect(ways('southern-british')).toEqual(['eɪt', 'ɛt'])
  expect(ways('general-american')).toEqual(['eɪt'])
})

it("shan't has the a of bath, and wiry that of wire", () => {
  const first = (accent: Accent, word: string) => testPhonics(accent).read(word).pronunciations[0]?.ipa
  expect(first('southern-british', "shan't")).toBe('ʃɑːnt')
  expect(first('general-american', "shan't")).toBe('ʃænt')
  expect(first('general-american', 'wiry')).toBe('ˈwaɪriː')
})
