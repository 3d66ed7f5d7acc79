// Edits between two words, and a place in a sorted list.

import { describe, expect, it } from 'vitest'
import { countEdits } from '../src/edits.ts'
import { findFirstNotBelow, findIndexOf, findLastIndex } from '../src/sorted.ts'

describe('countEdits', () => {
  it.each([
    ['', '', 0, 0],
    ['a', '', 1, 1],
    ['hen', 'hen', 0, 0],
    ['hen', 'pen', 1, 1],
    ['hen', 'ehn', 1, 2],
    ['shep', 'sheep', 1, 1],
    ['green-1', 'green-10', 1, 1],
    ['kitten', 'sitting', 3, 3],
    ['ca', 'abc', 3, 3],
    ['tsar', 'star', 1, 2],
    ['a'.repeat(40), 'b'.repeat(70), 70, 70],
  ])('%s → %s is %i, and %i where no two letters swap', (from, to, edits, withoutSwaps) => {
    for (const [one, other] of [
      [from, to],
      [to, from],
    ] as const) {
      expect(countEdits(one, other, { swaps: true })).toBe(edits)
      expect(countEdits(one, other)).toBe(withoutSwaps)
    }
  })

  it('counts sounds as well as letters', () => {
    expect(countEdits(['ʃ', 'ɪ', 'p'], ['tʃ', 'ɪ', 'p'])).toBe(1)
  })
})

describe('a sorted list', () => {
  const list = [1, 3, 3, 8, 20]

  it('is searched as a walk would', () => {
    for (let wanted = -1; wanted < 23; wanted++) {
      expect(findLastIndex(list.length, (at) => (list[at] ?? 0) <= wanted)).toBe(
        list.findLastIndex((one) => one <= wanted),
      )
      const first = list.findIndex((one) => one >= wanted)
      expect(findFirstNotBelow(list, wanted)).toBe(first < 0 ? list.length : first)
      expect(findIndexOf(list, wanted)).toBe(list.indexOf(wanted))
    }
    expect(findLastIndex(0, () => true)).toBe(-1)
    expect(findIndexOf([], 'hen')).toBe(-1)
  })
})
