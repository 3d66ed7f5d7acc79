import { expect, test } from 'vitest'
import {
  findCapitalStep,
  findExample,
  findFirstExample,
  findSoundExample,
  findStep,
} from '../../src/sequence/taught.ts'
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

test('of several examples of one sound the first is shown that is not the word itself', () => {
  const own = toSequence([
    toStep('one', '', { correspondences: [taught('ai', 'rain', 'eɪ')] }),
    toStep('two', '', { correspondences: [taught('ai', 'train', 'eɪ'), taught('ay', 'day', 'eɪ')] }),
  ])
  expect(findExample(own, 'ai=eɪ', 'tail')).toBe('rain')
  expect(findExample(own, 'ai=eɪ', 'rain')).toBe('train')
  expect(findSoundExample(own, 'ei=eɪ', 'rain')).toMatchObject({ letters: 'ai', example: 'train' })
})

test('of pairs that would each do, the one that is taught first is shown; of one step, the foremost', () => {
  const [my, pie] = [taught('y', 'my', 'aɪ'), taught('ie', 'pie', 'aɪ')]
  const toSteps = (...steps: (readonly ReturnType<typeof taught>[])[]) =>
    toSequence(steps.map((correspondences, at) => toStep(`step-${at}`, '', { correspondences })))
  const keys = ['ie=aɪ', 'y=aɪ']
  expect(findFirstExample(toSteps([my, pie]), keys)).toBe('pie')
  expect(findFirstExample(toSteps([my], [pie]), keys)).toBe('my')
  expect(findFirstExample(toSteps([pie], [my]), keys)).toBe('pie')
  expect(findFirstExample(toSteps([my]), keys)).toBe('my')
  expect(findFirstExample(toSteps([my, pie]), ['y=aɪ'])).toBe('my')
  expect(findFirstExample(toSteps([]), keys)).toBeUndefined()
  expect(findFirstExample(toSteps([my]), [])).toBeUndefined()
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
