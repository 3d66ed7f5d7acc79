// Where two versions of a text differ: the one stretch, as short as can be.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { findChange } from '../../src/story/change.ts'

it.each([
  ['Tam sat.', 'Tam sat.', [8, 8, 8]],
  ['Tam sat.', 'Tam ran.', [4, 7, 7]],
  ['Tam sat.', 'Tam has sat.', [4, 4, 8]],
  ['Tam has sat.', 'Tam sat.', [4, 8, 4]],
  ['', 'Tam', [0, 0, 3]],
  ['Tam', '', [0, 3, 0]],
  // What could be before or after the change is before it.
  ['aa', 'aaa', [2, 2, 3]],
  ['aaa', 'aa', [2, 3, 2]],
])('%j and %j', (before, after, [start, oldEnd, newEnd]) => {
  const shared = { start, oldEnd, newEnd }
  expect(findChange(before, after)).toEqual(shared)
})

it('finds the shortest stretch in texts of any length', () => {
  const part = fc.oneof(
    fc.string({ unit: fc.constantFrom('a', 'b'), maxLength: 8 }),
    fc.nat(9000).map((length) => 'ab'.repeat(length)),
  )
  fc.assert(
    fc.property(part, part, part, part, (front, removed, put, back) => {
      const [before, after] = [front + removed + back, front + put + back]
      const { start, oldEnd, newEnd } = findChange(before, after)
      expect(before.slice(0, start) + after.slice(start, newEnd) + before.slice(oldEnd) === after).toBe(true)
      expect(start).toBeLessThanOrEqual(Math.min(oldEnd, newEnd))
      // Neither end can be drawn in.
      const isEmpty = start === oldEnd || start === newEnd
      expect(isEmpty || before[start] !== after[start]).toBe(true)
      expect(isEmpty || before[oldEnd - 1] !== after[newEnd - 1]).toBe(true)
      expect(before.length - oldEnd).toBe(after.length - newEnd)
      expect(oldEnd - start).toBeLessThanOrEqual(removed.length)
    }),
    { seed: 20_261_129, numRuns: 150 },
  )
})
