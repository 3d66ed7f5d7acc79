// The word that was meant by a slip of the pen: over a small dictionary of its own, then over what the package ships. Common practice, no
// source: letters swapped, doubled, left out, words written by their sound, an apostrophe forgotten are the slips of children and parents.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openSlips, writeSlips } from '../../src/phonics/lexicon/slip-words.ts'
import { findSlip, findSlips } from '../../src/phonics/slip.ts'
import { toSkeleton } from '../../src/phonics/slip-sounds.ts'
import type { WordPronunciations } from '../../src/phonics/types.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'

const WORDS =
  "the to there not of they no on too off their see has little little table friend until happen believe rabbit don't i'm they're they'll they've " +
  "can't won't people school hammer bell loose lose form from god good bel hotel panel ton bee ash says many there little"

/** Words that are right, and that nobody proposes. */
const OTHERS = ['form', 'from', 'eon', 'bels']

const TABLE = {
  everyday: [...new Set(WORDS.split(' '))],
  slips: new Map([
    ['thier', 'their'],
    ['cant', "can't"],
    ['im', "i'm"],
    ['wen', 'when'],
  ]),
  names: new Set(['wen']),
}
const open = (table: typeof TABLE) => openSlips(new TextEncoder().encode(writeSlips(table, toSkeleton)))
const phonics = {
  isListed: (word: string) => TABLE.everyday.includes(word) || OTHERS.includes(word),
  read: (word: string) =>
    ({
      pronunciations: SOUNDS[word] === undefined ? [] : [{ ipa: SOUNDS[word] }],
    }) as unknown as WordPronunciations,
  slips: open(TABLE),
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
    const two = { ...phonics, slips: open({ ...TABLE, everyday: [...TABLE.everyday, 'hamre'] }) }
    expect(findSlips('hamer', two)).toEqual(['hammer', 'hamre'])
    expect(findSlip('hamer', two, { isBetter: (word) => word === 'hamre' })).toBe('hamre')
    expect(findSlip('hamer', two, { isBetter: () => false })).toBe('hammer')
  })
})

describe('with the words of the package, a slip', () => {
  const meant = (word: string) => findSlip(word, testPhonics('general-american'))

  it.each(
    (
      "thier their, wen when, wich which, im I'm, thats that's, shes she's, whos who's, Whats what's, becos because, verry very, " +
      'comming coming, caried carried, neice niece, childs children, childrens children, mans men, gooses geese, sheeps sheep, ' +
      'tooths teeth, foots feet, goed went, eated ate, runned ran, swimmed swam, bringed brought, catched caught, maked made, ' +
      'knowed knew, sitted sat, leafs leaves, mouses mice, knifes knives, nite night, sayed said, siad said, classs class, bloww blow, grasss grass, sorrry sorry, litle little, ' +
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

describe("the commonest misspellings of children's writing", () => {
  const engine = testPhonics('southern-british')
  const rows = readFileSync(new URL('data/misspellings-of-children.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .filter((row) => !row.startsWith('#'))
    .slice(1)
    .map((row) => row.split('\t') as [written: string, meant: string])

  it('are a hundred and more', () => {
    expect(rows.length).toBeGreaterThan(100)
  })

  it.each(rows)('%s: %s is offered first', (written, meant) => {
    expect(engine.read(written).meant ?? findSlip(written, engine)).toBe(meant)
  })
})

describe('the slips in the lexicon file', () => {
  const open = (source: Parameters<typeof writeSlips>[0]) =>
    openSlips(new TextEncoder().encode(writeSlips(source, toSkeleton)))
  const slips = open({
    everyday: ['says', 'sees', "can't", 'say'],
    slips: new Map([
      ['cant', "can't"],
      ['wen', 'when'],
    ]),
    names: new Set(['wen']),
  })

  it.each([
    ['says', 0],
    ['sees', 1],
    ["can't", 2],
    ['say', 3],
    ['sa', Infinity],
    ['sayss', Infinity],
    ['cant', Infinity],
    ['a', Infinity],
    ['zz', Infinity],
    ['', Infinity],
  ])('%j has the place %d', (word, place) => {
    expect(slips.rank(word)).toBe(place)
  })

  it('tell what is meant, and whether it may be a name', () => {
    expect(slips.meant('cant')).toEqual({ word: "can't", isName: false })
    expect(slips.meant('wen')).toEqual({ word: 'when', isName: true })
    expect(slips.meant('says')).toBeUndefined()
    expect(slips.meant('we')).toBeUndefined()
  })

  it('tell the words of a skeleton, and those with a beginning', () => {
    expect(slips.alike(toSkeleton('sez'))).toEqual(
      ['says', 'sees', 'say'].filter((word) => toSkeleton(word) === toSkeleton('sez')),
    )
    expect(slips.alike('xyz')).toEqual([])
    expect(slips.beginning('s')).toEqual(['say', 'says', 'sees'])
    expect(slips.beginning('say')).toEqual(['say', 'says'])
    expect(slips.beginning('c')).toEqual(["can't"])
    expect(slips.beginning('x')).toEqual([])
  })

  it('are found without reading more of the table than a few lines', () => {
    const everyday = testLexicon().words().slice(0, 20_000)
    const bytes = new TextEncoder().encode(writeSlips({ everyday, slips: new Map(), names: new Set() }, toSkeleton))
    let read = 0
    const counted = new Proxy(bytes, {
      get(target, key) {
        if (/^\d+$/.test(String(key))) read++
        return Reflect.get(target, key, target)
      },
    })
    expect(openSlips(counted).rank(everyday[7777] ?? '')).toBe(7777)
    expect(read).toBeLessThan(bytes.length / 500)
  })

  it('may be none', () => {
    const none = openSlips(new Uint8Array())
    expect([none.rank('a'), none.meant('a'), none.alike('s'), none.beginning('a')]).toEqual([
      Infinity,
      undefined,
      [],
      [],
    ])
  })

  it('has every word that it was written with, whatever stands beside it', () => {
    const words = testLexicon()
      .words()
      .filter((_, at) => at % 50 === 0)
    const all = open({ everyday: words, slips: new Map(), names: new Set() })
    expect(words.filter((word, at) => all.rank(word) !== at)).toEqual([])
    expect(words.filter((word) => all.rank(`${word}q`) < Infinity && !words.includes(`${word}q`))).toEqual([])
  })
})
