import { describe, expect, it } from 'vitest'
import { createWordJudge, findPattern, findPatternLines } from '../../src/verdict/index.ts'
import { phonics, series } from '../shelf/engine.ts'

const has = (written: string, word: string, step = 'green-14'): boolean | undefined =>
  findPattern(written, series, step)?.isIn(phonics.read(word))

describe('a pattern', () => {
  it.each([
    ['ai', 'rain', true],
    ['ai', 'said', false],
    ['ai', 'train', true],
    ['a_e', 'cake', true],
    ['a-e', 'lane', true],
    ['a_e', 'cat', false],
    ['sh', 'fish', true],
    ['sh', 'his', false],
    ['-s', 'hats', true],
    ['-s', 'miss', false],
    ['-ed', 'jumped', true],
    ['-ed', 'red', false],
    ['CVC', 'cat', true],
    ['CVC', 'frog', false],
    ['CCVC', 'frog', true],
  ])('%s in %s: %s', (written, word, isIn) => {
    expect(has(written, word)).toBe(isIn)
  })

  it.each([
    // Known by heart from pink-2 and blue-4 on.
    ['th', 'the', 'green-1', false],
    ['th', 'they', 'green-14', false],
    ['th', 'this', 'green-1', true],
    // Before it is taught.
    ['th', 'this', 'blue-6', false],
    ['ee', 'green', 'green-1', false],
    ['-ing', 'jumping', 'green-5', false],
    ['-ing', 'jumping', 'green-6', true],
  ])('%s is practised by %s at %s: %s', (written, word, step, isPractised) => {
    const { verdict } = createWordJudge(series, step)(phonics.read(word))
    expect(findPattern(written, series, step)?.isPractised(word, verdict)).toBe(isPractised)
  })

  it('of letters with one sound may have another example, and else the lines are told that name one', () => {
    expect(has('sh as in fish', 'ship')).toBe(true)
    expect(findPattern('n as in net', series, 'green-14')).toBeUndefined()
    expect(findPatternLines('n as in net', series)).toEqual(['n as in nap', 'n as in bank'])
  })

  it('is nothing where more stands before or after it', () => {
    for (const written of ['the ai in rain', 'ai as in', 'ai in rain or so', '', ' ', 'qz as in rain'])
      expect(findPattern(written, series, 'green-14'), written).toBeUndefined()
    expect(has(' ai in rain ', 'train')).toBe(true)
  })

  it('of letters alone means the sounds that were taught so far', () => {
    expect(has('a', 'cat', 'pink-4')).toBe(true)
    expect(has('a', 'was', 'pink-4')).toBe(false)
    expect(has('oo', 'moon', 'green-6')).toBe(true)
  })

  it('of letters that come later means what is taught then', () => {
    expect(has('igh', 'night', 'pink-1')).toBe(true)
  })

  it('can name one sound by the example of the sequence', () => {
    expect(has('th as in this', 'that')).toBe(true)
    expect(has('th as in this', 'thin')).toBe(false)
  })

  it.each(['xz', 'CVCV', '', 'th as in zebra'])('%j is none that the sequence has', (written) => {
    expect(findPattern(written, series, 'green-14')).toBeUndefined()
  })
})
