import { describe, expect, it } from 'vitest'
import { isHeldOut } from '../../scripts/accuracy/held-out.ts'
import { readAgain } from '../../scripts/accuracy/showing.ts'
import { readShowing } from '../../scripts/build/showing.ts'
import { openShowing, packShowing } from '../../src/words/showing.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

const rows = readShowing()

describe('the table of what children say of things and pictures', () => {
  it('is sorted, each word once, each a word of the dictionary', () => {
    const words = rows.map(({ word }) => word)
    expect(words).toEqual([...new Set(words)].sort())
    const lexicon = testLexicon()
    expect(words.filter((word) => lexicon.find(word) === undefined)).toEqual([])
  })

  it('says which word is likelier, or what is to be shown, and has no note without need', () => {
    const needsNote = rows.filter(({ object, picture }) => /likelier|hint/.test(object + picture))
    expect(needsNote.filter(({ note }) => note === '')).toEqual([])
    expect(rows.filter((row) => row.note !== '' && !needsNote.includes(row))).toEqual([])
    expect(rows.filter(({ word, note }) => note === word || /[,"]/.test(note))).toEqual([])
  })

  it('has a second judgement of one word in eight, and both agree on what is offered first', () => {
    const again = readAgain()
    const judged = new Set(again.map(({ word }) => word))
    expect(rows.map(({ word }) => word).filter((word) => isHeldOut(word, 'boxes') && !judged.has(word))).toEqual([])
    const first = new Map(rows.map((row) => [row.word, row]))
    for (const as of ['object', 'picture'] as const) {
      const offered = again.filter(({ word }) => first.get(word)?.[as] === 'fine')
      expect(offered.length).toBeGreaterThan(99)
      expect(offered.filter((row) => row[as] === 'fine').length / offered.length).toBeGreaterThanOrEqual(0.95)
    }
  })

  it('is read again as it was packed', () => {
    const showing = openShowing(packShowing(rows.map((row) => [row.word, row])))
    for (const { word, object, picture, note } of rows) expect(showing(word)).toEqual({ object, picture, note })
    expect(showing('qwertz')).toBeUndefined()
  })
})
