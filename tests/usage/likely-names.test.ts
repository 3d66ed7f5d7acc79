import { expect, test } from 'vitest'
import { findLikelyNames, isAllCapitals, toBareName } from '../../src/usage/likely-names.ts'
import { toStory } from '../lint/hand-made.ts'

test.each([
  ['hen met Priya.', ['Priya']],
  ["hen met Priya's hen.", ['Priya']],
  ['Priya ran.', []],
  ['hen met Priya.\npriya ran.', []],
  ['hen met PRIYA.', []],
  ['hen and I ran.', []],
  ['hen said, “Run now”', []],
  ['hen met, Run now', ['Run']],
])('likely names of %j: %j', (page, names) => {
  expect([...findLikelyNames(toStory([page]))]).toEqual(names)
})

test.each([
  ['STOP', true],
  ["DON'T", true],
  ['Stop', false],
  ['A', false],
  ["I'm", false],
])('%s all in capitals: %s', (text, isAll) => {
  expect(isAllCapitals(text)).toBe(isAll)
})

test.each([
  ["Meg's", 'Meg'],
  ['Meg’s', 'Meg'],
  ["Moses'", 'Moses'],
  ["it's", "it's"],
])('the bare name of %s is %s', (text, bare) => {
  expect(toBareName(text)).toBe(bare)
})
