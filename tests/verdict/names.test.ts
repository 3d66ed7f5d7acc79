// Names that a story allows: whole words, their capitals, several words, an owner's ending.

import { describe, expect, it } from 'vitest'
import { findOwner, isContraction } from '../../src/verdict/apostrophe.ts'
import { isAllowedName, markNames } from '../../src/verdict/names.ts'

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
  ])('%s with %j: %s', (word, names, allowed) => {
    expect(isAllowedName(word, names)).toBe(allowed)
  })
})

describe('markNames', () => {
  it.each([
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
    ["it's", undefined],
    ["let's", undefined],
    ["can't", undefined],
    ['dogs', undefined],
  ])('the owner in %s is %s', (word, owner) => {
    expect(findOwner(word)).toBe(owner)
  })

  it.each(["can't", 'can’t', "it's", "I'm", "we'll", "o'clock", "'tis"])('%s is a contraction', (word) => {
    expect(isContraction(word)).toBe(true)
  })

  it.each(["dog's", "dogs'", 'dogs', 'well'])('%s is none', (word) => {
    expect(isContraction(word)).toBe(false)
  })
})
