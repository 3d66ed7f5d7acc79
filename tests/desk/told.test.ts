// What a maker reads of a problem: its file where that is another one, one sentence after the other, and nothing that is thrown is lost.

import { expect, it } from 'vitest'
import { toAllTold, toTold, tryOut } from '../../src/desk/told.ts'

const place = { start: { line: 4, column: 3, offset: 9 }, end: { line: 4, column: 5, offset: 11 } }

it('names the file and the line of a sequence, and counts no lines of a story', () => {
  const problem = { message: 'There is no mark `x`', expected: ['comma'], path: 'ours.yaml', place }
  expect(toTold(problem)).toBe('ours.yaml, line 4: There is no mark `x`. Did you mean `comma`?')
  expect(toTold({ ...problem, path: 'tam.md' })).toBe('There is no mark `x`. Did you mean `comma`?')
})

it('parts two problems by a full stop', () => {
  expect(
    toAllTold([
      { message: 'One', expected: [], note: 'Do this.' },
      { message: 'Two', expected: [] },
    ]),
  ).toBe('One. Do this. Two.')
})

it('tells what is thrown, and nothing where it went well', async () => {
  expect(await tryOut(() => Promise.reject(new Error('The part that checks has stopped.')))).toBe(
    'The part that checks has stopped.',
  )
  expect(await tryOut(async () => undefined)).toBeUndefined()
})
