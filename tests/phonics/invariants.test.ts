// What must hold for every word, known or not.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createPhonics } from '../../src/phonics/index.ts'
import type { Accent, Pronunciation } from '../../src/phonics/types.ts'
import { expectLinear } from '../growth.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'

const ACCENTS = ['general-american', 'southern-british'] as const
const known = () => fc.constantFrom(...testLexicon().words())
const invented = () => fc.stringMatching(/^[a-z]{1,12}$/)
const anyWord = () =>
  fc.oneof(
    known(),
    invented(),
    fc.tuple(known(), known()).map((parts) => parts.join('-')),
  )
const accent = () => fc.constantFrom<Accent>(...ACCENTS)

/** The places of the letters that the units hold, in the order of the units. */
const places = ({ units }: Pronunciation): number[] =>
  units.flatMap(({ spans }) => spans.flatMap(([from, to]) => Array.from({ length: to - from }, (_, k) => from + k)))

describe('units', () => {
  it('cover the letters once, in order of their first letter', () => {
    fc.assert(
      fc.property(anyWord(), accent(), (word, inAccent) => {
        for (const pronunciation of testPhonics(inAccent).read(word).pronunciations) {
          const letters = Array.from(word, (_, at) => at).filter((at) => word[at] !== '-')
          expect([...places(pronunciation)].sort((x, y) => x - y)).toEqual(letters)
          const starts = pronunciation.units.map(({ spans }) => spans[0]?.[0] ?? -1)
          expect(starts).toEqual([...starts].sort((x, y) => x - y))
        }
      }),
      { numRuns: 400 },
    )
  })

  it('say together what the whole word says', () => {
    fc.assert(
      fc.property(anyWord(), accent(), (word, inAccent) => {
        for (const { units, ipa } of testPhonics(inAccent).read(word).pronunciations) {
          expect(units.map(({ sound }) => sound).join('')).toBe(ipa.replace(/[ˈˌ]/g, ''))
        }
      }),
      { numRuns: 400 },
    )
  })

  it('are spelt as the letters they stand on', () => {
    fc.assert(
      fc.property(anyWord(), accent(), (word, inAccent) => {
        for (const { units } of testPhonics(inAccent).read(word).pronunciations) {
          for (const { letters, spans } of units) {
            const shared = letters.endsWith('_e') && spans.length === 1
            expect(spans.map(([from, to]) => word.slice(from, to)).join(spans.length > 1 ? '_' : '')).toBe(
              shared ? letters.slice(0, -2) : letters,
            )
          }
        }
      }),
      { numRuns: 400 },
    )
  })

  it('make syllables that have the letters of the word, one for each stressed or weak vowel', () => {
    fc.assert(
      fc.property(known(), accent(), (word, inAccent) => {
        for (const { syllables } of testPhonics(inAccent).read(word).pronunciations) {
          expect(syllables.join('')).toBe(word)
          expect(syllables.every((syllable) => syllable !== '')).toBe(true)
        }
      }),
      { numRuns: 400 },
    )
  })
})

describe('reading', () => {
  it('never throws, whatever stands there', () => {
    const text = fc.oneof(fc.string({ maxLength: 10_000 }), fc.string({ unit: 'binary', maxLength: 10_000 }))
    fc.assert(
      fc.property(text, accent(), (word, inAccent) => {
        expect(testPhonics(inAccent).read(word).word).toBe(word)
      }),
      { numRuns: 60 },
    )
  })

  it.each([
    '',
    '-',
    "'",
    "''",
    "'s",
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    '’',
    'ß',
    'é',
    '\ud800',
    'ab\u0301c',
  ])('takes %j', (word) => {
    for (const inAccent of ACCENTS) expect(() => testPhonics(inAccent).read(word)).not.toThrow()
  })

  it('takes time that grows no faster than the word', () => {
    for (const part of ['a', 'zub', 'th', "a'", 'cat-', 'zub-', 's']) {
      const read = (letters: number) =>
        createPhonics(testLexicon(), 'southern-british').read(part.repeat(Math.floor(letters / part.length)))
      expectLinear(read, 2500, part)
    }
  })

  it('does not depend on what was read before', () => {
    fc.assert(
      fc.property(fc.array(anyWord(), { minLength: 1, maxLength: 6 }), anyWord(), (before, word) => {
        const fresh = createPhonics(testLexicon(), 'general-american')
        for (const one of before) fresh.read(one)
        expect(fresh.read(word)).toEqual(createPhonics(testLexicon(), 'general-american').read(word))
      }),
      { numRuns: 60 },
    )
  })

  it('is the same in capitals', () => {
    fc.assert(
      fc.property(known(), (word) => {
        const ipa = (written: string) =>
          testPhonics('general-american')
            .read(written)
            .pronunciations.map((pronunciation) => pronunciation.ipa)
        expect(ipa(word.toUpperCase())).toEqual(ipa(word))
      }),
      { numRuns: 100 },
    )
  })
})
