// The small parts of the reports on shelves and readers: shares, charts and tables for spreadsheets.

import { describe, expect, it } from 'vitest'
import { toChart } from '../../src/report/chart.ts'
import { toCsv } from '../../src/report/csv.ts'
import { toPercentOf } from '../../src/report/share.ts'
import { readCsv } from '../cli/vocabulary-world.ts'

it.each([
  [71 / 79, 0.9, '89 %'],
  [0.9, 0.9, '90 %'],
  [0.994, 1, '99 %'],
  [0.5, 0.9, '50 %'],
])('a share of %d beside one of %d is %s', (share, wanted, text) => {
  expect(toPercentOf(share, wanted)).toBe(text)
})

describe('a table for a spreadsheet', () => {
  // RFC 4180, section 2: rules 1, 6 and 7.
  it('quotes what needs quotes and ends lines with CR and LF', () => {
    expect(
      toCsv([
        ['a', 'b,c'],
        ['say "hi"', 'two\nlines'],
      ]),
    ).toBe('a,"b,c"\r\n"say ""hi""","two\nlines"\r\n')
  })

  it('is read again as it was written', () => {
    const rows = [
      ['a', '', '"'],
      [',', 'x\r\n', 'x y'],
    ]
    expect(readCsv(toCsv(rows))).toEqual(rows)
  })

  it.each(['=1+1', '+1', '-ed', '@a', '\tx'])('takes the sting from %j', (cell) => {
    expect(readCsv(toCsv([[cell]]))).toEqual([[`'${cell}`]])
  })

  it('leaves figures as they are', () => {
    expect(toCsv([[-1, 0.5, null, undefined]])).toBe('-1,0.5,,\r\n')
  })
})

describe('a chart', () => {
  const row = { what: 'the', first: 1, times: [0, 12, 0, 3] }

  it('has a digit for each book', () => {
    expect(toChart([row], 4, 80).at(-1)).toBe('  the  - + 0 3  15 times, back in 1 of 2 later books')
  })

  it('puts books together where they do not fit', () => {
    const many = { what: 'the', first: 0, times: Array.from({ length: 100 }, () => 1) }
    const [note = '', ...rest] = toChart([many], 100, 80)
    expect(note).toContain('Each column stands for 4 books')
    expect(rest.at(-1)).toMatch(/^ {2}the {2}4{25} {2}100 times/)
  })

  it('shows the use of a word before the book that brings it', () => {
    expect(toChart([{ what: 'sh', first: 2, times: [1, 0, 2] }], 3, 80).at(-1)).toContain('sh  1 - 2  3 times')
  })
})
