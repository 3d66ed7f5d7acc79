import fc from 'fast-check'
import { expect, it } from 'vitest'
import { toLines } from '../../src/print/lay/lines.ts'
import { unmarked } from '../../src/print/lay/words.ts'
import { testLetters } from './fonts.ts'

const letters = testLetters()
const break_ = (text: string, width: number): string[] | undefined =>
  toLines(unmarked(text), width, 10, letters)?.map((line) => line.text.text)

it('keeps the and a with the word that follows', () => {
  expect(break_('Meg and Sid sat on the log.', 75)?.some((line) => / (?:the|a)$/.test(line))).toBe(false)
})

it('leaves no word of a sentence of four alone', () => {
  for (const width of [80, 95, 105, 120, 140])
    expect(break_('A duck swam up to Meg.', width)?.every((line) => line.includes(' '))).toBe(true)
})

it('breaks no word, not at a hyphen either, and says where one is too wide', () => {
  expect(break_('a merry-go-round', 90)).toEqual(['a merry-go-round'])
  expect(break_('a merry-go-round', 40)).toBeUndefined()
})

it('keeps a break that the writer made', () => {
  expect(break_('Up!\nUp he ran.', 200)).toEqual(['Up!', 'Up he ran.'])
})

const word = fc.stringMatching(/^[a-z]{1,9}[.,!?]?$/)

it('loses and repeats no word, whatever is broken', () => {
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 30 }), fc.integer({ min: 60, max: 260 }), (words, width) => {
      const lines = break_(words.join(' '), width)
      if (!lines) return words.some((one) => letters.widthOf(one, 10) > width)
      return lines.join(' ') === words.join(' ') && lines.every((line) => letters.widthOf(line, 10) <= width + 1e-6)
    }),
    { seed: 7, numRuns: 300 },
  )
})
