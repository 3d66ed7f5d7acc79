// Words that are said by the names of their letters, or as another word. Common practice, no source; the lists from memory,
// each as a dictionary for learners has it.

import { describe, expect, it } from 'vitest'
import { findAbbreviation } from '../../src/verdict/abbreviations.ts'

const LETTERS = { kind: 'letters' }
const short = (full: string) => ({ kind: 'short', full: full.split(' or ') })
const first = (letter: string) => ({ kind: 'first letter', letter })

describe('said by the names of its letters', () => {
  it.each([
    // Listed: they have vowels, or are written small.
    ...[
      'TV',
      'tv',
      'Tv',
      'UK',
      'USA',
      'OK',
      'ok',
      'UFO',
      'VIP',
      'DIY',
      'EU',
      'GP',
      'NHS',
      'ABC',
      'BBC',
      'CD',
      'DVD',
      'SOS',
    ],
    ...['CIA', 'DJ', 'FBI', 'HQ', 'IQ', 'MP', 'NYC', 'PC', 'PJ', 'PM', 'RV', 'SUV', 'XL'],
    // With stops between.
    ...['U.K.', 'u.k.', 'a.m.', 'U.S.A', 'U.S.A.'],
    // One or more of them, or what is theirs.
    ...['TVs', "TV's", 'DVDs', 'UFO’s'],
    // In capitals alone.
    ...['AI', 'ATM', 'CEO', 'HMS', 'ID', 'IDs', 'LOL', 'PE', 'RAF', 'RSVP', 'UN'],
    // Nobody listed these, and no vowel is in them.
    ...['BFG', 'JCB', 'TNT', 'LCD', 'BMX', 'HGV', 'CCTV', 'QC', 'VHS', 'WC', 'ZDF', 'TNTs'],
  ])('%s', (word) => {
    expect(findAbbreviation(word)).toEqual(LETTERS)
  })
})

describe('short for another word', () => {
  it.each([
    ['Mr', 'mister'],
    ['mr', 'mister'],
    ['MR', 'mister'],
    ['Mr.', 'mister'],
    ['Capt', 'captain'],
    ['Sgt', 'sergeant'],
    ['Mrs', 'missis'],
    ['Ms', 'miz'],
    ['Dr', 'doctor'],
    ['Prof', 'professor'],
    ['St', 'saint or street'],
    ['Rd', 'road'],
    ['Jr', 'junior'],
    ['Sr', 'senior'],
    ['cm', 'centimetre'],
    ['kg', 'kilogram'],
    ['km', 'kilometre'],
    ['lb', 'pound'],
    ['Ltd', 'limited'],
    ['etc', 'and so on'],
    ['etc.', 'and so on'],
    ['vs', 'against'],
  ])('%s is %s', (word, full) => {
    expect(findAbbreviation(word)).toEqual(short(full))
  })
})

describe('said by the name of its first letter', () => {
  it.each([
    ['X-ray', 'X'],
    ['x-rays', 'x'],
    ['T-shirt', 'T'],
    ['T‑shirt', 'T'],
    ['e-mail', 'e'],
    ['U-turn', 'U'],
    // These two letters are words.
    ['a-lot', undefined],
    ['I-am', undefined],
    // Stuttered, as speakers in books do.
    ['B-but', undefined],
    ['b-but', undefined],
    ['D-dad', undefined],
    // Two letters are no word.
    ['T-ed', undefined],
  ])('%s: %s', (word, letter) => {
    expect(findAbbreviation(word)).toEqual(letter === undefined ? undefined : first(letter))
  })
})

describe('none at all', () => {
  it.each([
    // Words of small letters, and of capitals for shouting.
    ...[
      'cat',
      'Cat',
      'CAT',
      'doctor',
      'mist',
      'mrsx',
      'strong',
      'STOP',
      'STRENGTHS',
      'pcs',
      'okay',
      'it',
      'IT',
      'capt',
    ],
    // Noises without a vowel.
    ...['SHH', 'SH', 'HMM', 'BRR', 'ZZZ', 'PSST', 'PST', 'MMM', 'PFFT', 'TSK', 'SSS', 'GRR', 'shh'],
    // One letter, or many.
    ...['B', 'BCDFG', 'A.', 'a', 'DVDX1', 'U.K.ish'],
  ])('%s', (word) => {
    expect(findAbbreviation(word)).toBeUndefined()
  })
})
