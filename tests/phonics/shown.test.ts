// The word that shows a spelling: it has the letters with that sound itself, and an exception of the language has none. Which words are exceptions
// is common practice, no source: teachers call them tricky words.

import { describe, expect, it } from 'vitest'
import { frequencyRank } from '../../scripts/build/frequency.ts'
import type { Unit } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const WORDS =
  'ship cake rabbit sofa pencil forest basket lemon circus happy rain night boat farm story running hopped cats wanted swan talk wash was'.split(
    ' ',
  )
const FULL: Readonly<Record<string, readonly string[]>> = {
  a: ['æ'],
  e: ['ɛ'],
  i: ['ɪ'],
  o: ['ɒ', 'ɑ'],
  u: ['ʌ'],
}

const toLetters = ({ letters, base }: Unit): string => base ?? letters

describe.each(['general-american', 'southern-british'] as const)('%s', (accent) => {
  const units = (word: string) => testPhonics(accent).read(word).pronunciations[0]?.units ?? []

  it.each(WORDS)('what shows a letter of %s has it', (word) => {
    const shown = units(word).filter((unit) => unit.shown !== undefined)
    expect(shown.length).toBeGreaterThan(0)
    for (const unit of shown) {
      const keys = [unit.key, ...(FULL[unit.letters] ?? []).map((sound) => `${unit.letters}=${sound}`)]
      expect(
        units(unit.shown ?? '').map(({ key }) => key),
        `${unit.key} ${unit.shown}`,
      ).toEqual(expect.arrayContaining([expect.stringMatching(`^(${keys.join('|')})$`)]))
    }
  })

  it.each([
    ['said', 'ai'],
    ['any', 'a'],
    ['friend', 'ie'],
    ['busy', 'u'],
    ['women', 'o'],
    ['one', 'o'],
    ['yacht', 'ch'],
    ['sword', 'sw'],
    ['pretty', 'e'],
  ])('%s is an exception: nothing shows its %s', (word, letters) => {
    const unit = units(word).find((one) => toLetters(one) === letters)
    expect(unit).toBeDefined()
    expect(unit?.shown).toBeUndefined()
  })

  it.each([
    'ship',
    'chin',
    'moon',
    'rain',
    'green',
    'night',
    'cake',
    'home',
    'bell',
    'duck',
    'sing',
    'queen',
    'box',
    'jam',
  ])('each letter of %s is ordinary', (word) => {
    expect(units(word).filter((unit) => unit.shown === undefined)).toEqual([])
  })

  it('an ending is shown by nothing', () => {
    expect(units('wanted').at(-1)).toMatchObject({ kind: 'inflection' })
    expect(units('wanted').at(-1)?.shown).toBeUndefined()
  })

  // A weak vowel is shown by a full one, and the a of `diamond` and the i of `promise` are shown by nothing better.
  it('no example is itself told as an exception', () => {
    const used = [...frequencyRank].flatMap(([word, rank]) => (rank < 5000 ? [word] : []))
    const shown = used.flatMap((word) => units(word).flatMap((unit) => (unit.reduced || !unit.shown ? [] : [unit])))
    const odd = shown.filter(({ key, shown: example = '' }) => {
      const own = units(example).filter((unit) => unit.key === key)
      return own.length > 0 && own.every((unit) => unit.shown === undefined)
    })
    const pairs = new Set(odd.map((unit) => `${unit.key} ${unit.shown}`))
    for (const known of ['a= diamond', 'i_e=ə promise']) pairs.delete(known)
    expect([...pairs]).toEqual([])
  })
})
