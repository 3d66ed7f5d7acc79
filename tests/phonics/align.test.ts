// The aligner on tables small enough to work out by hand, and the guesser's model.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { learnModel } from '../../scripts/build/guess-model.ts'
import { findAlignment, learnCosts, toFirstCosts } from '../../src/phonics/align.ts'
import { EDGE, openModel } from '../../src/phonics/guess/model.ts'
import { CLOSE, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'
import { testSpelling } from '../lexicon-for-tests.ts'

const TABLE = [
  '# letters, sound, example',
  'a\tAE\tcat',
  'a\tEY\tbaby',
  'a_e\tEY\tcake',
  'b\tB\tbat',
  'c\tK\tcat',
  'e\t-\thorse',
  'e\tEH\tbed',
  'k\tK\tkit',
  's\tS\tsun',
  'h\tHH\that',
  'h\t-\thonest',
  'sh\tSH\tship',
  's\tSH\tsugar',
  't\tT\ttap',
  'ea\tIY\tsea',
  'ear\tIH R\tnear',
  'r\tR\tred',
  'tt\tT\tkitten',
].join('\n')
const set = toRowSet(readRows(TABLE))

const draw = (word: string, sounds: string, costs = toFirstCosts(set)): string | undefined =>
  findAlignment(set, { word, phones: sounds.split(' ') }, costs)
    ?.path.map((id) => (id === CLOSE ? '+' : `${set.rows[id]?.letters}=${set.rows[id]?.phones.join(' ')}`))
    .join(' ')

describe('alignment', () => {
  it.each([
    ['cat', 'K AE T', 'c=K a=AE t=T'],
    ['cake', 'K EY K', 'c=K a_e=EY k=K +'],
    ['bash', 'B AE SH', 'b=B a=AE sh=SH'],
    ['ear', 'IH R', 'ear=IH R'],
    ['seat', 'S IY T', 's=S ea=IY t=T'],
  ])('%s', (word, sounds, expected) => {
    expect(draw(word, sounds)).toBe(expected)
  })

  it('finds none where the table cannot say the sounds', () => {
    expect(draw('cat', 'D AO G')).toBeUndefined()
    expect(draw('cat', 'K AE')).toBeUndefined()
    expect(draw('', 'K')).toBeUndefined()
  })

  it('splits nothing over a doubled letter', () => {
    expect(draw('batte', 'B EY T')).toBe('b=B a=EY tt=T e=')
  })

  it('takes the cheaper way, whatever the number of its rows, but a silent letter is dear', () => {
    const small = toRowSet(readRows('ab\tAE B\na\tAE\nb\tB\nb\t-\na\tAE B'))
    const way = (row: readonly number[]) =>
      findAlignment(small, { word: 'ab', phones: ['AE', 'B'] }, { row: Float64Array.from(row), closeInside: 3 })
    expect(way([5, 1, 1, 0, 0])).toEqual({ path: [1, 2], cost: 2 })
    expect(way([1, 1, 1, 0, 0])).toEqual({ path: [0], cost: 1 })
    // The last row with the silent b costs nothing but the penalty.
    expect(way([11, 9, 9, 0, 0])).toEqual({ path: [4, 3], cost: 10 })
    expect(way([9, 9, 9, 0, 0])).toEqual({ path: [0], cost: 9 })
  })

  it('leaves the e of a long vowel to it, though the consonant has a row with an e: f·a_e·c', () => {
    const small = toRowSet(readRows('a\tEY\na_e\tEY\nc\tS\nce\tS\nf\tF\nn\tN\no\tAO'))
    const way = (word: string, sounds: string) =>
      findAlignment(
        small,
        { word, phones: sounds.split(' ') },
        { row: Float64Array.from([0, 5, 5, 0, 1, 1, 1]), closeInside: 3 },
      )?.path
    expect(way('face', 'F EY S')).toEqual([4, 1, 2, CLOSE])
    expect(way('fance', 'F EY N S')).toEqual([4, 0, 5, 3])
    expect(way('foce', 'F AO S')).toEqual([4, 6, 3])
  })

  it('closes a split grapheme at no cost at the end, and dearer inside', () => {
    const costs = toFirstCosts(set)
    const cost = (word: string, sounds: string) => findAlignment(set, { word, phones: sounds.split(' ') }, costs)?.cost
    expect(cost('bake', 'B EY K')).toBe(9)
    expect(cost('bakes', 'B EY K S')).toBe(12)
    expect(cost('bakeb', 'B EY K B')).toBe(15)
    expect(draw('bakeb', 'B EY K B')).toBe('b=B a_e=EY k=K + b=B')
    // A split grapheme that nothing closes is none.
    expect(draw('bak', 'B EY K')).toBe('b=B a=EY k=K')
  })

  it('leaves no comment line in the table', () => {
    expect(set.rows[0]).toMatchObject({ id: 0, letters: 'a', phones: ['AE'], example: 'cat' })
  })
})

describe('learning', () => {
  // Expectation-maximisation on four words: sh is always said together, so the pair s=SH h=- must grow dear.
  const entries = [
    ['bash', 'B AE SH'],
    ['shed', 'SH EH D'],
    ['sash', 'S AE SH'],
    ['hash', 'HH AE SH'],
  ].map(([word = '', sounds = '']) => ({ word, phones: sounds.split(' ') }))

  it('makes what is used cheap and what is not dear', () => {
    const { row } = learnCosts(set, entries, 5)
    const cost = (letters: string, sounds: string) =>
      row[set.rows.findIndex((one) => one.letters === letters && one.phones.join(' ') === sounds)] ?? NaN
    expect(cost('sh', 'SH')).toBeLessThan(cost('s', 'SH'))
    expect(cost('a', 'AE')).toBeLessThan(cost('a', 'EY'))
    expect(row.every(Number.isFinite)).toBe(true)
  })

  it('passes over a word that cannot be said so', () => {
    const odd = { word: 'kk', phones: ['B'] }
    expect(learnCosts(set, [...entries, odd], 2).row).toEqual(learnCosts(set, entries, 2).row)
  })

  it('counts no way that ends with a split grapheme open', () => {
    const cake = [{ word: 'bak', phones: ['B', 'EY', 'K'] }]
    const { row } = learnCosts(set, cake, 3)
    const cost = (letters: string, sounds: string) =>
      row[set.rows.findIndex((one) => one.letters === letters && one.phones.join(' ') === sounds)] ?? NaN
    expect(cost('a_e', 'EY')).toBe(cost('ea', 'IY'))
    expect(cost('a', 'EY')).toBe(cost('b', 'B'))
    // One of each of three rows, and a tenth of all eighteen.
    expect(cost('a', 'EY')).toBeCloseTo(-Math.log(1.1 / 4.8))
    expect(cost('ea', 'IY')).toBeCloseTo(-Math.log(0.1 / 4.8))
  })

  it('learns how often a split grapheme is closed inside a word', () => {
    const toEntries = (...words: readonly string[]) =>
      words.map((word) => ({ word, phones: ['B', 'EY', 'K', ...(word === 'bakeb' ? ['B'] : [])] }))
    const learn = (...words: readonly string[]) => learnCosts(set, toEntries(...words), 1).closeInside
    // One more of each kind than was seen.
    expect(learn('bake', 'bake')).toBeCloseTo(-Math.log(1 / 4))
    expect(learn('bakeb')).toBeLessThan(learn('bake'))
    expect(learn()).toBeCloseTo(-Math.log(1 / 2))
  })

  it('never makes the likeliest alignments less likely', () => {
    const total = (rounds: number) =>
      entries.reduce((sum, entry) => sum + (findAlignment(set, entry, learnCosts(set, entries, rounds))?.cost ?? 0), 0)
    expect(total(3)).toBeLessThanOrEqual(total(1) + 1e-6)
  })
})

describe('the model of the guesser', () => {
  const lessons = [
    [1, 5, 3],
    [1, 5, 3],
    [1, 5, 4],
  ].map((path) => ({ path, stress: [1] }))
  const model = openModel(learnModel(lessons, set.rows, { longest: 6, least: 0 }))()
  const symbolOf = (row: number) => model.byRow.get(row)?.[0] ?? NaN
  const read = (rows: readonly number[]) =>
    rows.reduce((context, row) => model.after(context, symbolOf(row)), model.start)

  it('finds what was seen often likelier than what was seen seldom, and that than what was never seen', () => {
    const costAfter = (row: number) => model.cost(read([1, 5]), symbolOf(row))
    expect(costAfter(3)).toBeLessThan(costAfter(4))
    expect(costAfter(4)).toBeLessThan(costAfter(1))
  })

  it.each([[[]], [[1]], [[1, 5]], [[5, 3]], [[3, 3]]])('gives shares that make one after %j', (rows) => {
    const sum = [EDGE, ...[1, 3, 4, 5].map(symbolOf)].reduce(
      (total, symbol) => total + Math.exp(-model.cost(read(rows), symbol)),
      0,
    )
    // The closing e, which was never seen, has the rest.
    expect(sum).toBeGreaterThan(0.75)
    expect(sum).toBeLessThan(1.02)
  })

  it('keeps what falling back costs, through pruning', () => {
    const pruned = openModel(learnModel(lessons, set.rows, { longest: 6, least: 0.02 }))()
    expect(pruned.cost(pruned.start, pruned.byRow.get(1)?.[0] ?? NaN)).toBeLessThan(1.5)
  })
})

describe('the table of correspondences', () => {
  const rows = readRows(readFileSync(new URL('../../src/phonics/data/correspondences.tsv', import.meta.url), 'utf8'))

  it('holds no row twice', () => {
    const names = rows.map(({ letters, phones }) => `${letters} ${phones.join(' ')}`)
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
  })

  // Said so only in a second pronunciation, which no careful pronunciation keeps, or in surnames of one vowel, which are read by their
  // letters where they are written small (`kluttz`); the rows let those entries align.
  const SECOND: ReadonlySet<string> = new Set(['awy OY', 'n M', 'r ER', 'tz S'])

  it('gives each row an example that is cut so', () => {
    const spelling = testSpelling()
    const wrong = rows.filter(({ letters, phones, example }) => {
      const name = `${letters} ${phones.join(' ')}`
      const isCut = spelling
        .spell(example)
        .cuttings.some(({ raw }) =>
          raw.units.some((unit) => `${unit.base ?? unit.letters} ${unit.phones.join(' ')}` === name),
        )
      return !isCut && !SECOND.has(name)
    })
    expect(wrong.map(({ letters, phones, example }) => `${letters} ${phones.join(' ')} ${example}`)).toEqual([])
  })
})
