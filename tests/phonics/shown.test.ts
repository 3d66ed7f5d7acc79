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

  // People say these both ways, and so do dictionaries: the i of `radio` and that of `onion` are one.
  it.each(['junior', 'senior', 'genius', 'behavior', 'familiar', 'onion', 'million', 'California', 'radio', 'piano'])(
    'the i before the vowel of %s is that of piano',
    (word) => {
      const all = units(word)
      const at = all.findLastIndex(({ letters }, k) => letters === 'i' && /^[aeiou]/.test(all[k + 1]?.letters ?? ''))
      expect(all[at]).toMatchObject({ key: 'i=iː', shown: 'piano' })
    },
  )

  // Most words with the sound have it in places that are ordinary, so those without are no exceptions.
  it.each([
    ['statue', 't', 'nature'],
    ['fortune', 't', 'picture'],
    ['quarter', 'ar', 'warm'],
    ['anchor', 'n', 'bank'],
    ['myth', 'y', 'system'],
    ['bicycle', 'y', 'gym'],
    ['ratio', 't', 'patient'],
    ['appreciate', 'c', 'special'],
    ['favourite', 'i_e', 'medicine'],
    ['engine', 'i_e', 'medicine'],
    ['desperate', 'a_e', 'pirate'],
    ['warrior', 'a', 'want'],
    ['ceremony', 'o', accent === 'southern-british' ? 'lemon' : 'go'],
    ['admirable', 'ir', 'bird'],
    ['failure', 'ure', 'cure'],
    ['false', 'a', 'also'],
    ['falsehood', 'a', 'also'],
    ['waltz', 'a', 'salt'],
  ])('what says %s with its %s is as ordinary as %s', (word, letters, other) => {
    const toUnit = (one: string) =>
      units(one).find(({ letters: own, key }) => own.startsWith(letters) && key === wanted)
    const wanted = units(word).findLast(({ letters: own }) => own === letters)?.key
    expect(toUnit(word)?.shown).toBeDefined()
    expect(toUnit(word)?.shown).toBe(toUnit(other)?.shown)
  })

  // Few of the words with the sound stand in a place that is ordinary for it.
  it.each(['individual', 'gradual', 'education', 'schedule'])('the d of %s is an exception', (word) => {
    expect(units(word).findLast(({ letters }) => letters === 'd')?.shown).toBeUndefined()
  })

  // What a message tells to add has a plain word: one that children know, or by which a built-in sequence teaches.
  it('an example has no ending of its own and is not put together', () => {
    const used = [...frequencyRank].flatMap(([word, rank]) => (rank < 8000 ? [word] : []))
    const shown = new Set(used.flatMap((word) => units(word).flatMap((unit) => unit.shown ?? [])))
    const isPlain = (word: string) =>
      testPhonics(accent).read(word).parts === undefined && units(word).every(({ kind }) => kind !== 'inflection')
    expect([...shown].filter((word) => !isPlain(word))).toEqual([])
    expect(units('flavour').at(-1)?.shown).toBe(accent === 'southern-british' ? 'colour' : 'journey')
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
