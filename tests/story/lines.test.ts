import { describe, expect, it } from 'vitest'
import { createLines } from '../../src/story/index.ts'

describe('createLines', () => {
  it('counts lines and columns from one', () => {
    const lines = createLines('ab\ncd\n')
    expect(lines.count).toBe(3)
    expect([0, 1, 2, 3, 5, 6].map((it) => lines.toPoint(it))).toEqual([
      { line: 1, column: 1 },
      { line: 1, column: 2 },
      { line: 1, column: 3 },
      { line: 2, column: 1 },
      { line: 2, column: 3 },
      { line: 3, column: 1 },
    ])
  })

  it('takes CRLF as one line ending, and CR alone as one too', () => {
    const lines = createLines('a\r\nb\rc\nd')
    expect([0, 3, 5, 7].map((it) => lines.toPoint(it))).toEqual([
      { line: 1, column: 1 },
      { line: 2, column: 1 },
      { line: 3, column: 1 },
      { line: 4, column: 1 },
    ])
  })

  it('does not count a byte order mark as a column', () => {
    expect(createLines('\uFEFFab').toPoint(1)).toEqual({ line: 1, column: 1 })
    expect(createLines('\uFEFFab').toPoint(0)).toEqual({ line: 1, column: 1 })
  })

  it('answers in any order, and outside the source with its nearest place', () => {
    const lines = createLines('ab\ncd\nef')
    expect(lines.toPoint(7)).toEqual({ line: 3, column: 2 })
    expect(lines.toPoint(1)).toEqual({ line: 1, column: 2 })
    expect(lines.toPoint(4)).toEqual({ line: 2, column: 2 })
    expect(lines.toPoint(99)).toEqual({ line: 3, column: 3 })
    expect(lines.toPoint(-1)).toEqual({ line: 1, column: 1 })
  })

  it('says of a place the same, whatever was asked before', () => {
    const source = 'a\n\nbc\n\n\nd\nef\r\ng\rh'
    const offsets = Array.from({ length: source.length + 3 }, (_, at) => at - 1)
    for (const before of offsets) {
      for (const offset of offsets) {
        const lines = createLines(source)
        lines.toPoint(before)
        expect(lines.toPoint(offset), `${before}, then ${offset}`).toEqual(createLines(source).toPoint(offset))
      }
    }
  })

  it('turns places back into offsets', () => {
    const source = 'ab\r\ncd\nef'
    const lines = createLines(source)
    for (const offset of [0, 1, 2, 4, 5, 6, 7, 8, 9]) {
      const { line, column } = lines.toPoint(offset)
      expect(lines.toOffset(line, column)).toBe(offset)
    }
    expect(lines.toOffset(9, 1)).toBe(7)
  })

  it('gives for a place beside a line the nearest in it', () => {
    const lines = createLines('ab\r\ncd\nef')
    expect([lines.toOffset(0, 1), lines.toOffset(-1, 2), lines.toOffset(9, 2)]).toEqual([0, 1, 8])
    expect([lines.toOffset(1, 99), lines.toOffset(2, 99), lines.toOffset(3, 99)]).toEqual([4, 7, 9])
    expect([lines.toOffset(2, 0), lines.toOffset(2, -9)]).toEqual([4, 4])
    expect(createLines('').toOffset(1, 1)).toBe(0)
    expect(createLines('').count).toBe(1)
  })
})
