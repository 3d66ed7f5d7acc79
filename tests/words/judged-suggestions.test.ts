import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readRows } from '../../scripts/accuracy/read-rows.ts'

const rows = readRows(readFileSync(new URL('data/judged-suggestions.tsv', import.meta.url), 'utf8')).map((row) =>
  row.split('\t'),
)

describe('the table of judged suggestions', () => {
  it('has 60 different words, each in its sentence', () => {
    expect(rows.length).toBe(60)
    expect(new Set(rows.map(([, , , word]) => word)).size).toBe(60)
    for (const [, , , word = '', sentence = ''] of rows) expect(sentence.split(/\W+/), word).toContain(word)
  })

  it('judges each suggestion once', () => {
    for (const [, , , word = '', , marks = ''] of rows) {
      const judged = marks.split(' ').filter(Boolean)
      expect(
        judged.every((mark) => /^[+-][a-z]+$/.test(mark)),
        word,
      ).toBe(true)
      expect(new Set(judged.map((mark) => mark.slice(1))).size, word).toBe(judged.length)
    }
  })
})
