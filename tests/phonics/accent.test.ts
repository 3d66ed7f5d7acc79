// Accents word by word.

import { describe, expect, it } from 'vitest'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

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
    ['LETTER', 'winter', 'ˈwɪntər', 'ˈwɪntə'],
  ])('%s: %s', (_, word, american, british) => {
    expect(first('general-american', word)).toBe(american)
    expect(first('southern-british', word)).toBe(british)
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
  ])('%s has %s', (word, key) => {
    expect(keys(word)).toContain(key)
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
