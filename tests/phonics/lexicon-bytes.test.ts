// The lexicon file, byte by byte where it matters: what is kept for each word, at every edge that its numbers have.

import { describe, expect, it } from 'vitest'
import { CLOSE } from '../../src/phonics/lattice.ts'
import { encodeLexicon, type LexiconEntry, type LexiconSource } from '../../src/phonics/lexicon/encode.ts'
import { openLexicon } from '../../src/phonics/lexicon/open.ts'
import { findSeams } from '../../src/phonics/lexicon/word-tables.ts'
import { readOrdinary, toPlaces, writeOrdinary } from '../../src/phonics/ordinary.ts'
import { readRows } from '../../src/phonics/rows.ts'

const ROWS = ['a\tAE', 'b\tB', 'c\tK', 'a_e\tEY', 'e\t-']

const open = (source: Partial<LexiconSource>) =>
  openLexicon(encodeLexicon({ rows: ROWS, entries: [], toModel: () => new Uint8Array(), parts: [], ...source }))

const entry = (word: string, ...paths: readonly (readonly number[])[]): LexiconEntry => ({
  word,
  pronunciations: paths.map((path) => ({ stress: '1', path })),
})

describe('rows', () => {
  it('stand in the order of their use, and of the table where that is the same', () => {
    const order: (readonly [number, number])[] = []
    const lexicon = open({
      entries: [entry('abe', [3, 1, CLOSE]), entry('bab', [1, 0, 1]), { word: 'babs', ending: 0, change: 0, mask: 1 }],
      toModel: (places) => {
        order.push(...places)
        return new Uint8Array()
      },
    })
    expect(lexicon.rows.map(({ letters }) => letters)).toEqual(['b', 'a', 'a_e', 'c', 'e'])
    expect(order).toEqual([
      [1, 0],
      [0, 1],
      [3, 2],
      [2, 3],
      [4, 4],
    ])
  })

  // A code takes one byte below 240, and two from there on.
  it.each([237, 238, 239, 240, 241, 494, 495, 496, 600])('number %i is read as it was written', (place) => {
    const rows = Array.from(
      { length: 700 },
      (_, k) => `${String.fromCharCode(97 + (k % 26)).repeat(1 + Math.floor(k / 26))}\tK`,
    )
    const letters = rows[place]?.split('\t')[0] ?? ''
    const lexicon = open({ rows, entries: [entry(letters, [place])].concat([]) })
    expect(lexicon.rows[0]?.letters).toBe(letters)
    // All rows are used once, so that each keeps its own number.
    const all = rows.map((row, id) => entry(row.split('\t')[0] ?? '', [id])).sort((x, y) => (x.word < y.word ? -1 : 1))
    const found = open({ rows, entries: all }).find(letters)
    expect(found).toEqual({ pronunciations: [{ path: [place], stress: [1] }] })
  })

  it('are read from a table with comments and empty lines', () => {
    const [silent, split, pair] = readRows('# letters\n\nb\t-\tlamb\na_e\tEY\tcake\nure\tY UH R\tcure\n')
    expect(silent).toEqual({ id: 0, letters: 'b', head: 'b', split: false, phones: [], vowel: false, example: 'lamb' })
    expect(split).toEqual({
      id: 1,
      letters: 'a_e',
      head: 'a',
      split: true,
      phones: ['EY'],
      vowel: true,
      example: 'cake',
    })
    expect(pair).toMatchObject({ id: 2, phones: ['Y', 'UH', 'R'], vowel: true, split: false })
  })
})

describe('words', () => {
  it('have the stress that was written, the commonest pattern first', () => {
    const lexicon = open({
      entries: [
        { word: 'a', pronunciations: [{ stress: '', path: [0] }] },
        {
          word: 'ab',
          pronunciations: [
            { stress: '10', path: [0, 1] },
            { stress: '201', path: [0, 1] },
          ],
        },
        { word: 'b', pronunciations: [{ stress: '10', path: [1] }] },
      ],
    })
    const stress = (word: string) => {
      const found = lexicon.find(word)
      return found && 'pronunciations' in found ? found.pronunciations.map((one) => one.stress) : []
    }
    expect(stress('a')).toEqual([[]])
    expect(stress('ab')).toEqual([
      [1, 0],
      [2, 0, 1],
    ])
    expect(stress('b')).toEqual([[1, 0]])
  })

  it('are stems with each ending, each change and a mask', () => {
    const entries: LexiconEntry[] = [entry('a', [0])]
    for (let ending = 0; ending < 7; ending++)
      for (let change = 0; change < 5; change++)
        entries.push({ word: `b${ending}${change}`, ending, change, mask: 1 + ending })
    const lexicon = open({ entries })
    for (const one of entries.slice(1)) {
      const { word, ...rest } = one
      expect(lexicon.find(word), word).toEqual(rest)
    }
  })

  it('are found in any number of blocks, and nothing beside them', () => {
    expect(open({}).size).toBe(0)
    for (const count of [1, 2, 31, 32, 33, 64, 65]) {
      const words = Array.from({ length: count }, (_, k) => `w${String(k).padStart(3, '0')}`)
      const lexicon = open({ entries: words.map((word) => entry(word, [0])) })
      expect(lexicon.size).toBe(count)
      expect(lexicon.words()).toEqual(words)
      words.forEach((word, at) => {
        expect([lexicon.indexOf(word), lexicon.wordAt(at)]).toEqual([at, word])
        expect([lexicon.find(`${word}x`), lexicon.find(word.slice(0, -1))]).toEqual([undefined, undefined])
      })
      expect([lexicon.wordAt(-1), lexicon.wordAt(count), lexicon.wordAt(count + 100)]).toEqual(['', '', ''])
      expect([lexicon.indexOf(''), lexicon.indexOf('a'), lexicon.indexOf('z')]).toEqual([-1, -1, -1])
      expect([lexicon.find(''), lexicon.find('z'.repeat(201))]).toEqual([undefined, undefined])
    }
  })

  it('have at most 200 letters', () => {
    const longest = 'a'.repeat(200)
    const lexicon = open({ entries: [{ word: longest, ending: 1, change: 2, mask: 3 }] })
    expect(lexicon.indexOf(longest)).toBe(0)
    expect(lexicon.find(longest)).toEqual({ ending: 1, change: 2, mask: 3 })
    expect(lexicon.indexOf(`${longest}a`)).toBe(-1)
    expect(lexicon.find(`${longest}a`)).toBeUndefined()
  })

  it('are unsure one by one', () => {
    const words = Array.from({ length: 20 }, (_, k) => `w${String.fromCharCode(97 + k)}`)
    const unsure = new Set(words.filter((_, at) => [0, 7, 8, 13, 19].includes(at)))
    const lexicon = open({ entries: words.map((word) => entry(word, [0])), unsure })
    expect(words.filter((word) => lexicon.find(word)?.unsure)).toEqual([...unsure])
    expect(open({ entries: words.map((word) => entry(word, [0])) }).find('wa')).not.toHaveProperty('unsure')
  })

  it('are no more than their patterns of stress allow', () => {
    const entries = (count: number) =>
      Array.from(
        { length: count },
        (_, k): LexiconEntry => ({
          word: `w${String(k).padStart(3, '0')}`,
          pronunciations: [{ stress: k.toString(3), path: [0] }],
        }),
      )
    expect(() => open({ entries: entries(255) })).toThrow('255 stress patterns do not fit one byte')
    expect(() => open({ entries: entries(254) })).not.toThrow()
  })
})

describe('where parts of a word meet', () => {
  const words = Array.from({ length: 600 }, (_, k) => `w${String(k).padStart(3, '0')}`)
  const seams = new Map([
    ['w000', [1]],
    ['w001', [2, 5, 23]],
    ['w002', [24]],
    ['w003', [8, 16, 24, 30]],
    ['w255', [7]],
    ['w256', [8]],
    ['w599', [15, 16]],
  ])
  const lexicon = open({ entries: words.map((word) => entry(word, [0])), seams, unsure: new Set(['w001', 'w004']) })
  const plain = { pronunciations: [{ path: [0], stress: [1] }] }

  it.each<[string, object]>([
    ['w000', { ...plain, seams: [1] }],
    ['w001', { ...plain, seams: [2, 5, 23], unsure: true }],
    // Further on than the file tells.
    ['w002', plain],
    ['w003', { ...plain, seams: [8, 16] }],
    ['w004', { ...plain, unsure: true }],
    ['w005', plain],
    ['w254', plain],
    ['w255', { ...plain, seams: [7] }],
    ['w256', { ...plain, seams: [8] }],
    ['w257', plain],
    ['w598', plain],
    ['w599', { ...plain, seams: [15, 16] }],
  ])('is kept with %s', (word, expected) => {
    const found = lexicon.find(word)
    expect(found).toEqual(expected)
    expect(Object.keys(found ?? {}).sort()).toEqual(Object.keys(expected).sort())
  })

  it('is read from three bytes for the place and three for the letters', () => {
    const bytes = Uint8Array.of(3, 0, 0, 2, 0, 0, 1, 2, 3, 0, 1, 128)
    expect(findSeams(bytes, 3)).toEqual([1])
    expect(findSeams(bytes, 0x03_02_01)).toEqual([8, 23])
    for (const place of [0, 2, 4, 0x02_01, 0x03_02_00, 0x03_02_02]) expect(findSeams(bytes, place)).toBeUndefined()
    expect(findSeams(new Uint8Array(), 0)).toBeUndefined()
  })
})

describe('other sections', () => {
  it('are handed through', () => {
    const bow = { word: 'bow', forms: [] }
    const lexicon = open({
      heteronyms: `bow\t${JSON.stringify(bow)}`,
      ordinary: 'general-american\nsh=ʃ\tship\n\nsouthern-british\nar=ɑː\tcar\na=æ\tcat',
      toModel: () => Uint8Array.of(9, 8),
    })
    expect(lexicon.heteronyms.find('bow')).toEqual(bow)
    expect(lexicon.ordinary('general-american')).toBe('sh=ʃ\tship')
    expect(lexicon.ordinary('southern-british')).toBe('ar=ɑː\tcar\na=æ\tcat')
    expect(lexicon.ordinary('southern')).toBe('')
    expect([...lexicon.model]).toEqual([9, 8])
    expect(lexicon.parts.size).toBe(0)
    expect(lexicon.parts).toBe(lexicon.parts)
    expect(open({}).ordinary('general-american')).toBe('')
  })

  it('keeps parts of compounds that stand far apart', () => {
    const words = Array.from({ length: 600 }, (_, k) => `w${String(k).padStart(3, '0')}`)
    const parts = [0, 254, 255, 509, 599].map((at, k) => ({
      word: words[at] ?? '',
      first: (k + 2) % 3,
      last: (k + 1) % 3,
    }))
    const lexicon = open({ entries: words.map((word) => entry(word, [0])), parts })
    expect([...lexicon.parts]).toEqual([
      [0, 9],
      [254, 2],
      [255, 4],
      [509, 9],
      [599, 2],
    ])
  })

  it('of another file are refused', () => {
    for (const at of [0, 1, 2, 3]) {
      const bytes = encodeLexicon({ rows: ROWS, entries: [], toModel: () => new Uint8Array(), parts: [] })
      bytes[at] = 0
      expect(() => openLexicon(bytes)).toThrow('this is not a lexicon file')
    }
  })
})

// The words that show a spelling. Which spellings are ordinary is measured elsewhere.
describe('ordinary spellings', () => {
  const find = readOrdinary(
    writeOrdinary([
      { key: 'sh=ʃ', example: 'ship', places: [] },
      { key: 'a=ɒ', example: 'swan', places: ['w-', '-lk'] },
      { key: 'o=ʌ', example: 'son', places: ['!w-'] },
    ]),
  )

  it('are found by key, and by place where that matters', () => {
    const never = () => {
      throw new Error('asked for places')
    }
    expect(find('sh=ʃ', never)).toBe('ship')
    expect(find('zh=ʒ', never)).toBeUndefined()
    expect(find('a=ɒ', () => ['c-', 'w-'])).toBe('swan')
    expect(find('a=ɒ', () => ['c-', '-t'])).toBeUndefined()
    expect(find('o=ʌ', () => ['s-', '-n'])).toBe('son')
    expect(find('o=ʌ', () => ['w-', '-n'])).toBeUndefined()
  })

  it.each([
    [['w', 'a', 'tch'], 1, 'w- -tch w-_-tch * -tch-$'],
    [['a', 't'], 0, '^- -t ^-_-t -t-$'],
    [['p', 'ie'], 1, 'p- -$ p-_-$ -$-1'],
    [['m', 'o', 'v', 'ie'], 3, 'v- -$ v-_-$'],
    [['f', 'ar', 'm', 'y', 'ar', 'd'], 3, 'm- -ar m-_-ar * -V -ar-d'],
    [['c', 'a', 'll', 's'], 1, 'c- -ll c-_-ll * -ll-s'],
    [['o'], 0, '^- -$ ^-_-$ -$-1'],
    [['t', 'r', 'y', 'ing'], 2, 'r- -ing r-_-ing * -V -ing-$'],
  ])('of %j at %i stand at %s', (letters, at, expected) => {
    expect(toPlaces(letters, at).join(' ')).toBe(expected)
  })
})
