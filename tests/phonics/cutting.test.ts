// Words made of two: every way to say the one with every way to say the other.

import { describe, expect, it } from 'vitest'
import { type Cutting, joinCuttings, toInflected } from '../../src/phonics/cutting.ts'

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

describe('where parts meet', () => {
  const withSeams = (one: Cutting, ...seams: number[]): Cutting => ({ ...one, raw: { ...one.raw, seams } })

  it('is kept of both words, and where they are joined', () => {
    const [first, second] = [withSeams(cutting('abcd', 'K'), 2), withSeams(cutting('xyz', 'S'), 1, 2)]
    expect(joinCuttings([first], [second], 4)[0]?.raw.seams).toEqual([2, 4, 5, 6])
    expect(joinCuttings([cutting('abcd', 'K')], [cutting('xyz', 'S')], 4)[0]?.raw.seams).toEqual([4])
  })

  it('is carried along with an ending, but not where the ending begins', () => {
    const inflection = { stem: 'abcd', ending: 's', change: 'none' } as const
    const [plain, sewn] = toInflected([cutting('abcd', 'K'), withSeams(cutting('abcd', 'K'), 2, 3, 4)], inflection)
    expect([plain?.raw.seams, plain?.stem]).toEqual([undefined, 'abcd'])
    expect(plain?.raw).not.toHaveProperty('seams')
    expect(sewn?.raw.seams).toEqual([2, 3])
    expect(sewn?.raw.units.map(({ letters }) => letters)).toEqual(['abcd', 's'])
  })

  it('an ending that the stem does not allow makes no word', () => {
    expect(toInflected([cutting('abcd', 'K')], { stem: 'abcd', ending: 'ing', change: 'double' })).toEqual([])
  })
})
