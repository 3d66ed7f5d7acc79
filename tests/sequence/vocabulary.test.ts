// Marks by their names. The names are those of the national curriculum for England, English Appendix 2 (punctuation), and in
// American English; common practice where neither has one.

import { describe, expect, it } from 'vitest'
import { findMarks, MARK_NAMES } from '../../src/sequence/vocabulary.ts'

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
