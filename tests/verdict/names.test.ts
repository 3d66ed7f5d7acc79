// Names that a story allows: whole words, their capitals, several words, an owner's ending.

import { describe, expect, it } from 'vitest'
import { findOwner, findShortened, isContraction } from '../../src/verdict/apostrophe.ts'
import { findNamedOwner, isAllowedName, markNames } from '../../src/verdict/names.ts'

describe('isAllowedName', () => {
  it.each([
    ['Tam', ['Tam'], true],
    ['TAM', ['Tam'], true],
    ['tam', ['Tam'], false],
    ['Tam', ['tam'], true],
    ['tams', ['tam'], false],
    ['Ta', ['Tam'], false],
    ['Ned', ['Old Ned'], true],
    ['Tam', [], false],
    ['Tam', [''], false],
    ['O’Dell', ["O'Dell"], true],
    ['Old', ['Ned', 'Old  Ned'], true],
    ['ned', ['Old Ned'], false],
    // Neither whole nor in part, and no other capital than the first alone or all.
    ['OldNed', ['Old Ned'], false],
    ['tAM', ['Tam'], false],
    ['TaM', ['Tam'], false],
    ['TAM', ['tam'], true],
  ])('%s with %j: %s', (word, names, allowed) => {
    expect(isAllowedName(word, names)).toBe(allowed)
  })
})

describe('findNamedOwner', () => {
  it.each([
    ["Tam's", ['Tam'], 'Tam'],
    ['Tams’', ['Tams'], 'Tams'],
    ["Ned's", ['Old Ned'], 'Ned'],
    ["Tam's", ['Ned'], undefined],
    ['Tam', ['Tam'], undefined],
    // The name is `It`: still nobody owns anything.
    ["It's", ['It'], undefined],
  ])('of %s with %j: %s', (word, names, owner) => {
    expect(findNamedOwner(word, names)).toBe(owner)
  })
})

describe('markNames', () => {
  it.each([
    ['met Old Ned and Old Ned', ['  Old   Ned '], '011011'],
    ['Old Ned', ['', ' '], '00'],
    ['Ned’s Old Ned', ['Ned'], '101'],
    ['the old Ned', ['old Ned', 'the'], '111'],
    ['OLD NED sat', ['Old Ned'], '110'],
    ['Old Old Ned', ['Old Ned'], '011'],
    ['Ned Old', ['Old Ned'], '00'],
    ['Old Ned sat', ['Old Ned'], '110'],
    ['Old hens sat', ['Old Ned'], '000'],
    ["Old Ned's hat and Tam’s", ['Old Ned', 'Tam'], '11001'],
    ["Old's Ned", ['Old Ned'], '00'],
    ['Tam Tam Tam', ['Tam Tam'], '111'],
    ['Tam', ['Tam the hen man'], '0'],
  ])('%s with %j: %s', (sentence, names, marks) => {
    expect(markNames(sentence.split(' '), names).map(Number).join('')).toBe(marks)
  })
})

describe('apostrophes', () => {
  it.each([
    ["dog's", 'dog'],
    ['dog’s', 'dog'],
    ["dogs'", 'dogs'],
    ["Zub's", 'Zub'],
    ["DOG'S", 'DOG'],
    ["DOGS'", 'DOGS'],
    ["it's", undefined],
    ["It's", undefined],
    ["let's", undefined],
    ["can't", undefined],
    ["'s", undefined],
    ["s'", undefined],
    ["o's'", "o's"],
    ['dogs', undefined],
  ])('the owner in %s is %s', (word, owner) => {
    expect(findOwner(word)).toBe(owner)
  })

  it.each(["can't", 'can’t', "it's", "I'm", "we'll", "o'clock", "'tis"])('%s is a contraction', (word) => {
    expect(isContraction(word)).toBe(true)
  })

  // Common practice, no source: after these words it is short for `is`, `has` or `us`.
  it.each('he she it that this what where there here who how when why let'.split(' '))(
    "%s's is a contraction, and owns nothing",
    (word) => {
      expect([isContraction(`${word}'s`), findOwner(`${word}’s`)]).toEqual([true, undefined])
    },
  )

  it.each([
    ["they've", 'they'],
    ["he'd", 'he'],
    ["she'll", 'she'],
    ["I'm", 'I'],
    ["you're", 'you'],
    ["it's", 'it'],
    ["wouldn't", 'would'],
    ['WOULDN’T', 'WOULD'],
    // The whole word before what is shortened: `ca` is none, but nobody is taught it.
    ["can't", 'ca'],
    ["o'clock", undefined],
    ["'tis", undefined],
    ["dog's", undefined],
    ["they'vee", undefined],
    ['dogs', undefined],
  ])('the whole word in %s is %s', (word, whole) => {
    expect(findShortened(word)).toBe(whole)
  })

  it.each(["dog's", "dogs'", 'dogs', 'well'])('%s is none', (word) => {
    expect(isContraction(word)).toBe(false)
  })
})
