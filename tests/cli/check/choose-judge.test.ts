// Workers begin by measured work: a clock that is handed in says how long the stories took.

import { expect, it } from 'vitest'
import { createMeter } from '../../../src/cli/check/choose-judge.ts'

/** After how many stories workers are called, where each takes so many milliseconds; undefined where never. */
function findStart(stories: number, each: number): number | undefined {
  let time = 0
  const isWorthIt = createMeter(stories, () => time)
  for (let at = 0; at < stories; at++, time += each) if (isWorthIt()) return at
  return undefined
}

it('calls no workers for little work, however many stories it is', () => {
  expect(findStart(200, 5)).toBeUndefined()
  expect(findStart(5000, 0.1)).toBeUndefined()
})

it('calls workers as soon as the work is measured where much is left, however few stories it is', () => {
  expect(findStart(5000, 5)).toBe(32)
  expect(findStart(100, 200)).toBe(32)
})

it('calls none when most is done before it is known that it takes long', () => {
  expect(findStart(40, 200)).toBeUndefined()
})
