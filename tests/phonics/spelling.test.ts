// How a word is found: in the list, by its ending, by its parts, drawn out, or not at all; and how sure that is. Common practice, no source.

import { describe, expect, it } from 'vitest'
import type { Spelled } from '../../src/phonics/cutting.ts'
import { createSpelling } from '../../src/phonics/spelling.ts'
import { testLexicon, testSpelling } from '../lexicon-for-tests.ts'

const spell = (word: string): Spelled => testSpelling().spell(word)

const grade = ({ source, unsure, unsureAsName, meant }: Spelled): string =>
  meant === undefined ? `${source}${unsure ? ', unsure' : unsureAsName ? ', unsure as a name' : ''}` : `for ${meant}`

/** The first cutting: each unit with what it stands for, + before an ending; then where parts meet. */
const cut = ({ cuttings: [first] }: Spelled): string =>
  [
    ...(first?.raw.units ?? []).map(
      ({ letters, base, kind }) =>
        `${kind === 'inflection' ? '+' : ''}${letters}${base === undefined ? '' : `<${base}`}`,
    ),
    ...(first?.raw.seams?.map((at) => `|${at}`) ?? []),
  ].join(' ')

describe('a word, how sure it is, and its letters', () => {
  it.each([
    // In the list: with seams, with an ending, with one of the forms of its stem.
    ['cat', 'dictionary', 'c a t'],
    ['aaberg', 'dictionary, unsure', 'aa b er g'],
    ['steamer', 'dictionary', 's t ea m er |5'],
    ['steamers', 'dictionary', 's t ea m er +s |5'],
    ['readers', 'dictionary', 'r ea d +er +s'],
    // The i stands for the y of a known word, and only the last one does.
    ['happiness', 'dictionary', 'h a pp i<y n e ss'],
    ['happinesses', 'dictionary', 'h a pp i<y n e ss +es'],
    ['silliness', 'dictionary', 's i ll i<y n e ss'],
    ['livelihood', 'dictionary', 'l i_e v l i<y h oo d'],
    ['pitiless', 'dictionary', 'p i t i<y l e ss'],
    ['homily', 'dictionary', 'h o m i l y'],
    ['happily', 'dictionary', 'h a pp i<y l y'],
    // What is owned is as sure as who owns it.
    ["zub's", 'guess', "z u b +'s"],
    ["zubs'", 'guess', "z u b +s +'"],
    ["boys'", 'dictionary', "b oy +s +'"],
    ["a's", 'dictionary', "a +'s"],
    ["siya's", 'guess, unsure', "s i y a +'s"],
    ["makeing's", 'for making', ''],
    ["'s", 'guess', ''],
    // A known word with an ending: the family of Yak is as sure as Yak, and nothing is called vex.
    ['yakking', 'dictionary, unsure as a name', 'y a kk<k +ing'],
    ['samed', 'dictionary, unsure as a name', 's a<a_e m +ed'],
    ['vexest', 'guess', 'v e x e s t'],
    ['jumpest', 'dictionary, unsure as a name', 'j u m p +est'],
    ['playest', 'dictionary, unsure as a name', 'p l ay +est'],
    ['pelicaning', 'dictionary, unsure as a name', 'p e l i c a n +ing'],
    ['aabergs', 'dictionary, unsure as a name', 'aa b er g +s'],
    ['henhouses', 'dictionary', 'h e n h ou s<se +es'],
    // These would double their last letter, and the stem of the last is too short.
    ['gobest', 'guess', 'g o b e s t'],
    ['hutest', 'guess, unsure', 'h u t e s t'],
    ['oxed', 'guess', 'o x e d'],
    // Put together.
    ['hatshop', 'guess', 'h a t sh o p |3'],
    ['moonboat', 'dictionary', 'm oo n b oa t |4'],
    // Made of a known word that is no name.
    ['hatless', 'dictionary', 'h a t l e ss |3'],
    ['blankly', 'dictionary', 'b l a n k l y |5'],
    ['penally', 'dictionary, unsure as a name', 'p e n a ll y |5'],
    ['emilly', 'dictionary, unsure as a name', 'e m i ll y |4'],
    ['fluffiness', 'dictionary', 'f l u ff i<y n e ss |6'],
    ['prettiness', 'dictionary', 'p r e tt i<y n e ss |6'],
    ['iciness', 'dictionary', 'i c i<y n e ss |3'],
    ['aabergless', 'guess, unsure', 'aa b er g l e ss'],
    // Drawn out: the short word, or the long one where only that is known or is no doubtful name.
    ['nooo', 'guess', 'n ooo<o'],
    ['mooon', 'guess', 'm ooo<oo n'],
    ['asssay', 'guess', 'a sss<ss ay'],
    ['abottt', 'guess, unsure', 'a b o ttt<tt'],
    ['siyaaa', 'guess, unsure', 's i y aaa<a'],
    ['makeinggg', 'for making', ''],
    ['zubbb', 'guess', 'z u bbb<b'],
    // No word at all.
    ['makeing', 'for making', ''],
    ['baging', 'for bagging', ''],
    ['thedog', 'for the dog', ''],
    ['tsk', 'guess', 't s k'],
  ])('%s: %s, %s', (word, sure, letters) => {
    expect([grade(spell(word)), cut(spell(word))]).toEqual([sure, letters])
  })
})

it('keeps the word that an ending was put on', () => {
  const stemOf = (word: string) => spell(word).cuttings[0]?.stem
  expect(['cats', 'henhouses', 'yakking', "zub's", 'hatless', 'asssay', 'cat'].map(stemOf)).toEqual([
    'cat',
    'henhouse',
    'yak',
    'zub',
    'hat',
    'assay',
    'cat',
  ])
})

it('finds a word once, and gives the same again', () => {
  expect(spell('zubbing')).toBe(spell('zubbing'))
})

describe('whether a word is listed', () => {
  // A spelling that has not been asked for the words before.
  const fresh = createSpelling(testLexicon())

  it.each([
    ['cat', true],
    ['steamers', true],
    ["cat's", true],
    ["cats'", true],
    ["zub's", false],
    ["zubs'", false],
    ["'s", false],
    ['', false],
    ['yakking', true],
    ['gobest', false],
    ['makeing', false],
    ["makeing's", false],
    ['moonboat', true],
    ['hatshop', false],
    ['hatless', true],
    ['nooo', false],
    ['tsk', false],
    ['thedog', false],
    ['zub', false],
  ])('%s: %s', (word, listed) => {
    expect(fresh.isListed(word)).toBe(listed)
    fresh.spell(word)
    expect(fresh.isListed(word)).toBe(listed)
  })
})
