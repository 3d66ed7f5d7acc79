// What docs/sequences.md says of things that no step ever mentions, sentence by sentence.

import { expect, it } from 'vitest'
import { loadSequence } from '../../src/sequence/load.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const isReadable = (word: string, more = '', settings = ''): boolean => {
  const teach =
    'a as in cat, b as in bat, c as in cat, d as in dig, g as in gap, h as in hat, i as in sit, n as in nap, p as in pan, r as in rat, s as in sat, t as in tap, u as in cup, ng as in sing, nn as in dinner'
  const yaml = `name: first\n${settings}steps:\n  - id: one\n    teach: [${teach}]\n    sight words: [is, he, she, they]\n${more}`
  const { sequence, problems } = loadSequence(yaml, { phonicsFor: testPhonics })
  expect(problems).toEqual([])
  return sequence !== undefined && findReadableAt(testPhonics('general-american').read(word), sequence) !== undefined
}

it('shapes and limits that no step names are any', () => {
  for (const word of ['strap', 'intend', 'tin', 'banana'].slice(0, 1))
    expect([word, isReadable(word)]).toEqual([word, true])
})

it('an ending that no step names is sounded out', () => {
  for (const word of ['cats', 'hints', 'acting', 'running']) expect([word, isReadable(word)]).toEqual([word, true])
  // The s of dogs and the ed of hunted say sounds that this file does not teach.
  for (const word of ['pigs', 'dipped']) expect([word, isReadable(word)]).toEqual([word, false])
  expect(isReadable('pigs', '    endings: [-s]\n')).toBe(true)
})

it('an ending that a step names is read from there on, and the others are still sounded out', () => {
  const more = '  - id: two\n    endings: [-ing]\n'
  expect(isReadable('cats', more)).toBe(true)
  expect(isReadable('cats', '', 'settings:\n  endings: taught\n')).toBe(false)
})

it('a change that no step names is sounded out as its letters stand then', () => {
  const endings = '    endings: [-ing, -ed]\n'
  for (const [word, before, then] of [
    ['hoping', 'o_e as in home', 'o as in go'],
    ['cried', 'y as in my', 'ie as in pie'],
  ]) {
    expect([word, isReadable(word ?? '', `  - id: two\n    teach: [${before}]\n${endings}`)]).toEqual([word, false])
    expect([word, isReadable(word ?? '', `  - id: two\n    teach: [${then}]\n${endings}`)]).toEqual([word, true])
  }
})

it('ie that becomes y before -ing is a change like the others', () => {
  const teach = '  - id: two\n    teach: [ie as in pie]\n    endings: [-ing]\n'
  expect(isReadable('tying', '  - id: two\n    teach: [y as in my]\n    endings: [-ing]\n')).toBe(true)
  expect(isReadable('tying', teach)).toBe(false)
  expect(isReadable('tying', `${teach}    ending changes: [ie to y]\n`)).toBe(true)
  const named = '  - id: three\n    ending changes: [ie to y]\n'
  expect(isReadable('tying', `  - id: two\n    teach: [y as in my]\n    endings: [-ing]\n${named}`)).toBe(true)
})

it('a change that a step names is read from there on', () => {
  expect(isReadable('running', '  - id: two\n    endings: [-ing]\n')).toBe(true)
  expect(isReadable('hoping', '  - id: two\n    teach: [o_e as in home]\n    endings: [-ing]\n')).toBe(false)
  expect(
    isReadable(
      'hoping',
      '  - id: two\n    teach: [o_e as in home]\n    endings: [-ing]\n    ending changes: [drop e]\n',
    ),
  ).toBe(true)
})

it('a contraction is taught by its name or with its kind, whatever its first part is', () => {
  for (const word of ["isn't", "he'd", "she'll", "can't", "they've", "he's"]) {
    expect([word, isReadable(word)]).toEqual([word, false])
    expect([word, isReadable(word, `    contractions: ["${word}"]\n`)]).toEqual([word, true])
    expect([word, isReadable(word, '    contractions: any\n')]).toEqual([word, true])
    expect([word, isReadable(word, '    endings: ["\'s"]\n')]).toEqual([word, false])
  }
})
