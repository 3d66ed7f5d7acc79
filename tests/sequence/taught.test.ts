import { expect, test } from 'vitest'
import { findCapitalStep, findExample, findSoundExample, findStep } from '../../src/sequence/taught.ts'
import { toSequence, toStep } from '../verdict/hand-made.ts'

const taught = (letters: string, example: string, sound: string) => ({
  letters,
  example,
  key: `${letters}=${sound}` as const,
})
const sequence = toSequence([
  toStep('one', '', { correspondences: [taught('e', 'bed', 'ɛ'), taught('ai', 'rain', 'eɪ')], capitals: 'first' }),
  toStep('two', '', {
    correspondences: [taught('ay', 'day', 'eɪ'), taught('a', 'paper', 'eɪ')],
    capitals: 'all',
    numerals: true,
  }),
])

test('the example is the one by which the sequence teaches it', () => {
  expect(findExample(sequence, 'ai=eɪ', 'paid')).toBe('rain')
  expect(findExample(sequence, 'ai=ɛ', 'said')).toBeUndefined()
})

test('no word is its own example', () => {
  expect(findExample(sequence, 'ai=eɪ', 'Rain')).toBeUndefined()
  expect(findSoundExample(sequence, 'a_e=eɪ', 'rain')?.example).toBe('day')
})

test('the sound of other letters is shown by what is taught for it', () => {
  expect(findSoundExample(sequence, 'ai=ɛ', 'said')).toMatchObject({ letters: 'e', example: 'bed' })
  expect(findSoundExample(sequence, 'ai=ʌ', 'said')).toBeUndefined()
})

test('the first step that adds a thing', () => {
  expect(findStep(sequence, ({ adds }) => adds.numerals === true)).toBe('two')
  expect(findStep(sequence, ({ adds }) => adds.endings.length > 0)).toBeUndefined()
  expect(findCapitalStep(sequence, 'first')).toBe('one')
  expect(findCapitalStep(sequence, 'all')).toBe('two')
})
