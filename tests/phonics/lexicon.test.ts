// The lexicon file: what is written is what is read.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CLOSE } from '../../src/phonics/lattice.ts'
import { encodeLexicon, type LexiconEntry } from '../../src/phonics/lexicon/encode.ts'
import { openLexicon } from '../../src/phonics/lexicon/open.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

const LETTERS = 'abcdefghijklmnopqrstuvwxyz'
const ROWS = [...LETTERS].map((letter) => `${letter}\t${/[aeiou]/.test(letter) ? 'AH' : 'S'}`)
// Enough rows that some need two bytes.
const MANY = [...ROWS, ...Array.from({ length: 300 }, (_, k) => `q${LETTERS[Math.floor(k / 26)]}${LETTERS[k % 26]}\tK`)]

const toEntry = (word: string): LexiconEntry => ({
  word,
  pronunciations: [{ stress: '1', path: [...word].map((letter) => LETTERS.indexOf(letter)) }],
})

const pack = (words: readonly string[], rows = ROWS) =>
  openLexicon(
    encodeLexicon({ rows, entries: [...words].sort().map(toEntry), toModel: () => new Uint8Array(), parts: [] }),
  )

const words = () => fc.uniqueArray(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 200 })

describe('round trip', () => {
  it('finds every word and its letters', () => {
    fc.assert(
      fc.property(words(), (list) => {
        const lexicon = pack(list)
        const sorted = [...list].sort()
        expect(lexicon.size).toBe(list.length)
        expect(lexicon.words()).toEqual(sorted)
        sorted.forEach((word, at) => {
          expect(lexicon.indexOf(word)).toBe(at)
          expect(lexicon.wordAt(at)).toBe(word)
          const found = lexicon.find(word)
          const path = found && 'pronunciations' in found ? (found.pronunciations[0]?.path ?? []) : []
          expect(path.map((id) => lexicon.rows[id]?.letters).join('')).toBe(word)
        })
      }),
    )
  })

  it('finds no other word', () => {
    fc.assert(
      fc.property(words(), fc.string({ maxLength: 14 }), (list, other) => {
        if (list.includes(other)) return
        const lexicon = pack(list)
        expect(lexicon.find(other)).toBeUndefined()
        expect(lexicon.indexOf(other)).toBe(-1)
      }),
    )
  })

  it('keeps rows that need two bytes, several pronunciations, and the closing e', () => {
    const entries: LexiconEntry[] = [
      { word: 'aqzz', pronunciations: [{ stress: '1', path: [0, 26 + 299] }] },
      {
        word: 'base',
        pronunciations: [
          { stress: '1', path: [1, 0, 18, CLOSE] },
          { stress: '10', path: [1, 0, 18, 4] },
        ],
      },
    ]
    const rows = MANY.map((row, at) => (at === 26 + 299 ? 'qzz\tK' : row))
    const lexicon = openLexicon(encodeLexicon({ rows, entries, toModel: () => new Uint8Array(), parts: [] }))
    const letters = (word: string) => {
      const found = lexicon.find(word)
      return found && 'pronunciations' in found
        ? found.pronunciations.map(
            ({ path, stress }) =>
              `${path.map((id) => (id === CLOSE ? '+' : lexicon.rows[id]?.letters)).join(' ')} ${stress.join('')}`,
          )
        : []
    }
    expect(letters('aqzz')).toEqual(['a qzz 1'])
    expect(letters('base')).toEqual(['b a s + 1', 'b a s e 10'])
  })

  it('keeps a stem with an ending', () => {
    const entries: LexiconEntry[] = [toEntry('cat'), { word: 'cats', ending: 0, change: 0, mask: 1 }]
    const lexicon = openLexicon(encodeLexicon({ rows: ROWS, entries, toModel: () => new Uint8Array(), parts: [] }))
    expect(lexicon.find('cats')).toEqual({ ending: 0, change: 0, mask: 1 })
  })

  it('keeps how words go into compounds, near and far', () => {
    const list = Array.from({ length: 700 }, (_, k) => `${LETTERS[Math.floor(k / 26)]}${LETTERS[k % 26]}`)
    const parts = [0, 3, 258, 513, 514, 699].map((at, k) => ({ word: list[at] ?? '', first: k % 3, last: (k + 1) % 3 }))
    const lexicon = openLexicon(
      encodeLexicon({ rows: ROWS, entries: list.map(toEntry), toModel: () => new Uint8Array(), parts }),
    )
    expect(
      [...lexicon.parts].map(([at, packed]) => ({ word: lexicon.wordAt(at), first: packed >> 2, last: packed & 3 })),
    ).toEqual(parts)
  })

  it('hands the model through', () => {
    const lexicon = openLexicon(
      encodeLexicon({ rows: ROWS, entries: [toEntry('cat')], toModel: () => Uint8Array.of(1, 2, 3), parts: [] }),
    )
    expect([...lexicon.model]).toEqual([1, 2, 3])
  })
})

describe('what is no lexicon', () => {
  it('is refused in plain words', () => {
    expect(() => openLexicon(new Uint8Array(100))).toThrow('not a lexicon file')
    const bytes = encodeLexicon({ rows: ROWS, entries: [toEntry('cat')], toModel: () => new Uint8Array(), parts: [] })
    bytes[4] = 99
    expect(() => openLexicon(bytes)).toThrow('version 99')
  })
})

describe('the built file', () => {
  it('holds its words in order, each at its place', () => {
    const lexicon = testLexicon()
    const all = lexicon.words()
    expect(all).toHaveLength(lexicon.size)
    expect(lexicon.size).toBeGreaterThan(100_000)
    for (let at = 1; at < all.length; at++) expect((all[at - 1] as string) < (all[at] as string)).toBe(true)
    for (const at of [0, 31, 32, 5000, all.length - 1]) expect(lexicon.wordAt(at)).toBe(all[at])
  })
})
