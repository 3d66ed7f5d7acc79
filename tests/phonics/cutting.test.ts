// Words made of two: every way to say the one with every way to say the other.

import { describe, expect, it } from 'vitest'
import { type Cutting, joinCuttings } from '../../src/phonics/cutting.ts'

const cutting = (letters: string, phone: string): Cutting => ({
  raw: { units: [{ letters, spans: [[0, letters.length]], phones: [phone], kind: 'correspondence' }] },
  stem: letters,
})

const show = (found: readonly Cutting[]): readonly string[] =>
  found.map(({ raw, stem }) =>
    [stem, ...raw.units.map(({ letters, spans, phones }) => `${letters}${JSON.stringify(spans)}${phones}`)].join(' '),
  )

describe('joinCuttings', () => {
  it('makes every pair, the second part moved behind the first', () => {
    expect(show(joinCuttings([cutting('ea', 'IY'), cutting('ea', 'EH')], [cutting('s', 'S')], 2))).toEqual([
      'ea ea[[0,2]]IY s[[2,3]]S',
      'ea ea[[0,2]]EH s[[2,3]]S',
    ])
  })

  it('keeps all four of two by two, and of more no more than four', () => {
    const two = [cutting('a', 'AE'), cutting('a', 'EY')]
    expect(joinCuttings(two, two, 1)).toHaveLength(4)
    expect(joinCuttings([...two, cutting('a', 'AH')], two, 1)).toHaveLength(4)
    expect(joinCuttings([], two, 1)).toEqual([])
  })
})
