import { describe, expect, it } from 'vitest'
import { createWordJudge, findPattern, findPatternLines } from '../../src/verdict/index.ts'
import { phonics, series } from '../shelf/engine.ts'
import { toSequence, toStep } from './hand-made.ts'

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
    ['AI as in RAIN', 'train', true],
    ['A-E', 'cake', true],
    ['-ED', 'jumped', true],
    ["'s", "dog's", true],
    ['’s', 'dog’s', true],
    ["'s", 'dogs', false],
    ['CVC', 'cat', true],
    ['CVC', 'cats', true],
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
    // Known by heart still, when all their letters have been taught.
    ['th', 'the', 'green-8', false],
    ['e', 'the', 'green-8', false],
    ['s', 'is', 'green-8', false],
    ['s', 'his', 'green-8', false],
    ['y', 'my', 'green-14', false],
    ['er', 'her', 'green-14', false],
    ['er', 'fern', 'green-14', true],
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

  it('is none where no step teaches it', () => {
    const small = toSequence([
      toStep('one', 'a=æ', { endings: ['-s'], shapes: ['CVC'] }),
      toStep('two', '', { shapes: 'any' }),
    ])
    for (const written of ['-s', 'CVC', 'a']) expect(findPattern(written, small, undefined)?.written).toBe(written)
    for (const written of ['-ed', 'CV', 'C', 'e']) expect(findPattern(written, small, undefined)).toBeUndefined()
  })

  it('is in a word as the sentence says it, where that is told', () => {
    const read = phonics.read('read')
    const forms = read.pronunciations.map(({ form }) => form)
    const pattern = findPattern('ea as in sea', series, 'green-15') ?? findPattern('ea', series, 'green-15')
    expect(new Set(forms.map((form) => pattern?.isIn(read, form)))).toEqual(new Set([true, false]))
    expect(pattern?.isIn(read)).toBe(true)
  })

  it('has a line for each sound of its letters', () => {
    expect(findPatternLines(' OW ', series).length).toBeGreaterThan(1)
    expect(findPatternLines('u-e as in lane', series)).toEqual(Array(2).fill(expect.stringMatching(/^u_e as in /)))
    expect(findPatternLines('e-e', series)).toEqual([expect.stringMatching(/^e_e as in /)])
    expect(findPatternLines('', series)).toEqual([])
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
