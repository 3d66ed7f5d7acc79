// The word that was meant by a slip of the pen: over a small dictionary of its own, then over what the package ships. Common practice, no
// source: letters swapped, doubled, left out, words written by their sound, an apostrophe forgotten are the slips of children and parents.

import { describe, expect, it } from 'vitest'
import { readSlips, writeSlips } from '../../src/phonics/lexicon/slip-words.ts'
import { findSlip } from '../../src/phonics/slip.ts'
import { toSkeleton } from '../../src/phonics/slip-sounds.ts'
import type { WordPronunciations } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const WORDS =
  "the to there not of they no on too off their see has little little table friend until happen believe rabbit don't i'm they're they'll they've " +
  "can't won't people school hammer bell loose lose form from god good bel hotel panel ton bee ash says many there little"

/** Words that are right, and that nobody proposes. */
const OTHERS = ['form', 'from', 'eon', 'bels']

const everyday = new Map([...new Set(WORDS.split(' '))].map((word, at) => [word, at]))
const phonics = {
  isListed: (word: string) => everyday.has(word) || OTHERS.includes(word),
  read: (word: string) =>
    ({
      pronunciations: SOUNDS[word] === undefined ? [] : [{ ipa: SOUNDS[word] }],
    }) as unknown as WordPronunciations,
  slips: {
    everyday,
    slips: new Map([
      ['thier', 'their'],
      ['cant', "can't"],
      ['im', "i'm"],
      ['wen', 'when'],
    ]),
    names: new Set(['wen']),
    alike: (skeleton: string) => [...everyday.keys()].filter((word) => toSkeleton(word) === skeleton),
  },
}

const SOUNDS: Readonly<Record<string, string>> = { sez: 'sɛz', says: 'sɛz', meny: 'ˈmɛni', many: 'ˈmɛni' }

describe('a slip', () => {
  it.each([
    ['littel', 'little'],
    ['tabel', 'table'],
    ['untill', 'until'],
    ['rabit', 'rabbit'],
    ['hapen', 'happen'],
    ['happpen', 'happen'],
    ['belll', 'bell'],
    ['beleive', 'believe'],
    ['freind', 'friend'],
    ['rfiend', 'friend'],
    ['friedn', 'friend'],
    ['thier', 'their'],
    ['Thier', 'their'],
    ['dont', "don't"],
    ['Dont', "don't"],
    ['theyre', "they're"],
    ['theyll', "they'll"],
    ['theyve', "they've"],
    ['cant', "can't"],
    ['nto', 'not'],
    ['hte', 'the'],
    ['im', "I'm"],
    ['Im', "I'm"],
    ['wen', 'when'],
    ['sez', 'says'],
    ['meny', 'many'],
    ['peple', 'people'],
    ['scool', 'school'],
    ['ther', 'there'],
  ])('%s is %s', (word, meant) => {
    expect(findSlip(word, phonics)).toBe(meant)
  })

  it.each([
    ['little', 'a known word'],
    ['form', 'a known word beside another'],
    ['Form', 'the same with a capital'],
    ['don’t', 'a known word with a curly apostrophe'],
    ['donʼt', 'the same with a letter for it'],
    ['on', 'a word of two letters'],
    ['goo', 'too short for a doubled letter to mean anything'],
    ['seee1', 'no letters alone'],
    ['1nto', 'no letters alone'],
    ['xyzzy', 'near nothing'],
    ['litttttle', 'far away'],
    ['loooose', 'drawn out'],
    ['seee', 'drawn out'],
    ['Wen', 'a name'],
    ['oen', 'near a word that no child knows'],
    ['hamr', 'of four letters, and near no little word'],
    ['', 'nothing'],
  ])('%j is none: %s', (word) => {
    expect(findSlip(word, phonics)).toBeUndefined()
  })

  it('prefers the word that the child can read, and else takes the most used', () => {
    expect(findSlip('lloose', phonics)).toBe('loose')
    const all = new Map([...everyday, ['hamre', 99]])
    const two = { ...phonics, slips: { ...phonics.slips, everyday: all } }
    expect(findSlip('hamer', two)).toBe('hammer')
    expect(findSlip('hamer', two, (word) => word === 'hamre')).toBe('hamre')
    expect(findSlip('hamer', two, () => false)).toBe('hammer')
  })
})

describe('with the words of the package, a slip', () => {
  const meant = (word: string) => findSlip(word, testPhonics('general-american'))

  it.each(
    (
      "thier their, wen when, wich which, im I'm, thats that's, shes she's, whos who's, Whats what's, becos because, verry very, " +
      'comming coming, caried carried, neice niece, childs children, childrens children, mans men, gooses geese, sheeps sheep, ' +
      'tooths teeth, foots feet, goed went, eated ate, runned ran, swimmed swam, bringed brought, catched caught, maked made, ' +
      'knowed knew, sitted sat, leafs leaves, mouses mice, knifes knives, nite night, sayed said, siad said, litle little, ' +
      'freind friend, oen one, scool school, peple people, sez says, ther there, eny any, meny many, Thier their, goodbey goodbye'
    )
      .split(', ')
      .map((one) => one.split(' ') as [string, string]),
  )('%s is %s', (word, right) => {
    expect(meant(word)).toBe(right)
  })

  it.each(['redhen red hen', 'bigred big red', 'dogran dog ran', 'catdog cat dog'].map((one) => one.split(/ (.*)/)))(
    '%s is the two words %s',
    (word = '', right = '') => {
      expect(meant(word)).toBe(right)
    },
  )

  it.each('glis Wen Gary Verry its wed well shell ill lets lied winded seed sited wolfs cat zog'.split(' '))(
    '%s is none',
    (word) => {
      expect(meant(word)).toBeUndefined()
    },
  )
})

describe('the slips in the lexicon file', () => {
  const words = {
    everyday: new Map([
      ['says', 0],
      ['sees', 1],
      ["can't", 2],
    ]),
    slips: new Map([
      ['cant', "can't"],
      ['wen', 'when'],
    ]),
    names: new Set(['wen']),
  }

  it('are read as they were written, with the words of each skeleton', () => {
    const read = readSlips(writeSlips(words, toSkeleton))
    expect(read.everyday).toEqual(words.everyday)
    expect(read.slips).toEqual(words.slips)
    expect(read.names).toEqual(words.names)
    expect(read.alike(toSkeleton('sez'))).toEqual(['says', 'sees'])
    expect(read.alike('xyz')).toEqual([])
  })

  it('may be none', () => {
    const read = readSlips('')
    expect([read.slips.size, read.names.size, read.alike('s')]).toEqual([0, 0, []])
  })
})
