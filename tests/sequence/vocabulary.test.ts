// Marks by their names. The names are those of the national curriculum for England, English Appendix 2 (punctuation), and in
// American English; common practice where neither has one.

import { describe, expect, it } from 'vitest'
import {
  findChangeName,
  findEndingName,
  findMarks,
  findShape,
  MARK_NAMES,
  toMarkNames,
} from '../../src/sequence/vocabulary.ts'

describe('findMarks', () => {
  it.each([
    ['full stop', '.'],
    ['Full Stop', '.'],
    ['period', '.'],
    ['comma', ','],
    ['question mark', '?'],
    ['exclamation mark', '!'],
    ['speech marks', '“ ” " ‘ ’ \''],
    ['quotation marks', '“ ” " ‘ ’ \''],
    ['"', '“ ” " ‘ ’ \''],
    ['hyphen', '- ‐ ‑'],
    ['dash', '– —'],
    ['–', '– —'],
    ['ellipsis', '… ...'],
    ['…', '… ...'],
    ['...', '… ...'],
    ['colon', ':'],
    ['semicolon', ';'],
    ['brackets', '( )'],
    ['parentheses', '( )'],
    ['.', '.'],
    ['?', '?'],
    ['*', '*'],
  ])('%s is %s', (written, marks) => {
    expect(findMarks(written)?.join(' ')).toBe(marks)
  })

  it('takes the apostrophe in each of its forms', () => {
    expect(findMarks('apostrophe')).toEqual(expect.arrayContaining(["'", '’', 'ʼ']))
    expect(findMarks("'")).toEqual(findMarks('apostrophe'))
  })

  it.each(['coma', 'a', '7', '', ' ', '..', 'full', '. '])('%j is none', (written) => {
    expect(findMarks(written)).toBeUndefined()
  })

  it('knows every name that it offers', () => {
    for (const name of MARK_NAMES) expect(findMarks(name), name).toBeDefined()
  })
})

describe('marks by name', () => {
  it.each([
    [
      ['.', ','],
      ['full stop', 'comma'],
    ],
    // In the order in which they are taught, not in that of the file; one form of a mark is the mark.
    [
      ['—', '’'],
      ['speech marks', 'apostrophe', 'dash'],
    ],
    [
      ['*', ')'],
      ['brackets', '*'],
    ],
    [[], []],
  ])('%j', (marks, names) => {
    expect(toMarkNames(new Set(marks))).toEqual(names)
  })
})

describe('other words of a file', () => {
  it.each([
    ['CVC', 'CVC'],
    ['cvc', 'CVC'],
    ['V', 'V'],
    ['CCVCC', 'CCVCC'],
    // Each syllable has a vowel, and nothing else is counted.
    ['CC', undefined],
    ['CVX', undefined],
    ['XCV', undefined],
    ['', undefined],
  ])('the shape %j is %s', (written, shape) => {
    expect(findShape(written)).toBe(shape)
  })

  it.each([
    ['-s', '-s'],
    ['s', '-s'],
    ['ED', '-ed'],
    ["'s", "'s"],
    ['’s', "'s"],
    ['-ings', undefined],
    ['', undefined],
  ])('the ending %j is %s', (written, ending) => {
    expect(findEndingName(written)).toBe(ending)
  })

  it.each([
    ['double', 'double'],
    ['drop e', 'drop-e'],
    ['drop-e', 'drop-e'],
    ['Drop the E', 'drop-e'],
    ['ie-to-y', 'ie-to-y'],
    ['y to i', 'y-to-i'],
    ['dropping', undefined],
  ])('the change %j is %s', (written, change) => {
    expect(findChangeName(written)).toBe(change)
  })
})
