// Doubled r, worn-down u and o_e, long vowels before r, and words that the dictionary has wrong: seen by hand, common practice, no source.

import { describe, expect, it } from 'vitest'
import { loadBuiltIn } from '../../src/packaged/data.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const american = () => testPhonics('general-american')
const british = () => testPhonics('southern-british')
const series = loadBuiltIn('series') as Sequence

describe('in the three series', () => {
  it.each([
    ['stirred', 'green-11'],
    ['blurred', 'green-11'],
    ['purr', 'green-5'],
    ['furry', 'green-12'],
    ['hurry', 'green-12'],
    ['whir', 'green-5'],
    ['happiness', 'green-13'],
    ['laziness', 'green-13'],
    ['argument', 'green-13'],
    ['length', 'green-1'],
    ['strength', 'green-1'],
    ['scarecrow', 'green-10'],
    ['hooray', 'green-6'],
    ['flour', 'green-6'],
    ['fury', 'green-12'],
    ['during', 'green-12'],
    ['vary', 'green-12'],
    // Two little words, one of them known by heart.
    ['welcome', 'green-1'],
    ['handsome', 'green-13'],
    ['soccer', 'green-5'],
    ['account', 'green-6'],
    ['Saturday', 'green-13'],
    ['perfect', 'green-5'],
    ['coming', 'green-11'],
    // Put together of words that are known by heart or read, with an ending.
    ['welcomed', 'green-11'],
    ['boing', 'green-6'],
    ['dying', 'green-11'],
    ['lying', 'green-11'],
    ['tying', 'green-11'],
    ['crying', 'green-6'],
    ['sooner', 'green-8'],
    ['banger', 'green-8'],
    ['freer', 'green-11'],
    ['dangler', 'green-12'],
    // A form is said in all the ways of its stem.
    ['poorer', 'green-10'],
    ['moored', 'green-10'],
    ['relying', 'green-13'],
    // An e at the end that has no work to do, a vowel that is swallowed, and dg before a vowel.
    ['axe', 'green-4'],
    ['route', 'green-6'],
    ['cigarette', 'green-13'],
    ['basically', 'green-13'],
    ['diamond', 'green-12'],
    ['budgie', 'green-13'],
    ['gadget', 'green-8'],
    ['electronic', 'green-14'],
    ['doorknobs', 'green-10'],
    ['anyways', 'green-13'],
    ['type', 'green-15'],
    ['discussion', 'green-14'],
    ['pension', 'green-14'],
    // Spellings of their own, taught later than a silent e is.
    ['horse', 'green-8'],
    ['please', 'green-8'],
    ['oh', 'blue-4'],
    ['yeah', 'green-4'],
  ])('%s can be read at %s', (word, step) => {
    const at = findReadableAt(american().read(word), series)
    expect(at).toBe(step)
  })
})

describe('cut', () => {
  const cut = (word: string) =>
    american()
      .read(word)
      .pronunciations[0]?.units.map(({ letters }) => letters)
      .join('·')

  it.each([
    ['ceiling', 'c·ei·l·i·ng'],
    ['conceit', 'c·o·n·c·ei·t'],
    ['receive', 'r·e·c·ei·ve'],
    ['ocean', 'o·ce·a·n'],
    ['pigeon', 'p·i·ge·o·n'],
    ['patient', 'p·a·ti·e·n·t'],
    ['social', 's·o·ci·a·l'],
    ['cough', 'c·ough'],
    ['rough', 'r·ough'],
    ['earring', 'ear·r·i·ng'],
  ])('%s is %s', (word, units) => {
    expect(cut(word)).toBe(units)
  })

  it.each([
    ['ate', 'eɪt'],
    ['moustache', 'məstɑːʃ'],
    ['cough', 'kɒf'],
  ])('%s is %s in Southern British', (word, ipa) => {
    expect(british().read(word).pronunciations[0]?.ipa.replace(/[ˈˌ]/g, '')).toBe(ipa)
  })
})

it.each(['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'])(
  '%s ends in day first',
  (word) => {
    expect(american().read(word).pronunciations[0]?.ipa).toMatch(/deɪ$/)
  },
)

it.each([
  ['abjection', /ʃən$/],
  ['Isla', /^ˈaɪlə$/],
  ['Sadie', /^ˈseɪdiː$/],
  ['brooch', /^broʊtʃ$/],
])('%s is said as it is', (word, ipa) => {
  expect(american().read(word).pronunciations[0]?.ipa).toMatch(ipa)
})

it('brooch is said in one way in each country', () => {
  const say = (phonics: typeof american) =>
    phonics()
      .read('brooch')
      .pronunciations.map(({ ipa }) => ipa)
  expect([say(american), say(british)]).toEqual([['broʊtʃ'], ['brəʊtʃ']])
})

it.each(
  'talk walk walks walked stalk chalk chalks chalky chalked chalking chalkboard chalkboards balk catwalk crosswalk crosswalks sidewalk spacewalk spacewalking beanstalk'.split(
    ' ',
  ),
)('%s has the a of talk and no other', (word) => {
  const vowels = american()
    .read(word)
    .pronunciations.map(
      ({ units }) => units.find(({ letters }, at) => letters === 'a' && units[at + 1]?.letters === 'lk')?.key,
    )
  expect(vowels).toEqual(['a=ɔ'])
})
