import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readShowing } from '../../scripts/build/showing.ts'
import { loadWordSources } from '../../scripts/build/words.ts'
import { openIcons } from '../../scripts/pictures/icons.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

const read = (file: string): readonly (readonly string[])[] =>
  readFileSync(new URL(`../../src/print/${file}`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => line.split('\t'))

const [head, ...rows] = read('pictures.tsv')
const [refusedHead, ...refused] = read('pictures-refused.tsv')
const icons = openIcons()

describe('the table of pictures', () => {
  it('has its four columns, none of them empty', () => {
    expect(head).toEqual(['word', 'picture', 'alt', 'reason'])
    expect(rows.filter((row) => row.length !== 4 || row.some((cell) => cell.trim() !== cell || cell === ''))).toEqual(
      [],
    )
    expect(rows.length).toBeGreaterThan(299)
  })

  it('is sorted, each word once', () => {
    const words = rows.map(([word = '']) => word)
    expect(words).toEqual([...new Set(words)].sort())
  })

  it('names icons that the set has', () => {
    expect(rows.filter(([, picture = '']) => !icons.has(picture))).toEqual([])
  })

  it('holds only words of the dictionary that are fit for children', () => {
    const { fitness } = loadWordSources()
    const lexicon = testLexicon()
    expect(rows.filter(([word = '']) => lexicon.find(word) === undefined)).toEqual([])
    expect(rows.filter(([word = '']) => !fitness.isFit(word))).toEqual([])
  })

  it('shows one picture under two words only where it says why', () => {
    const twice = rows.filter(([, picture], at) => rows.findIndex(([, other]) => other === picture) !== at)
    expect(twice.filter(([, , , reason = '']) => !reason.includes('the same thing as '))).toEqual([])
  })

  it('holds no word that the table of what children say doubts', () => {
    const doubted = new Set(readShowing().flatMap(({ word, picture }) => (picture === 'fine' ? [] : [word])))
    expect(rows.filter(([word = '']) => doubted.has(word))).toEqual([])
  })

  it('shows several things under a plural', () => {
    const plurals = rows.filter(([word = '']) => /[^su]s$/.test(word) && word !== 'tennis')
    const isMany = (alt: string): boolean => /^(two|three|peas)\b|^a (pair|pile|bunch|bowl) of /.test(alt)
    expect(plurals.length).toBeGreaterThan(9)
    expect(plurals.filter(([, , alt = '']) => !isMany(alt))).toEqual([])
  })
})

describe('the table of refused pictures', () => {
  it('is sorted, each pair once, with a reason', () => {
    expect(refusedHead).toEqual(['word', 'picture', 'reason'])
    const pairs = refused.map(([word, picture]) => `${word}\t${picture}`)
    expect(pairs).toEqual([...new Set(pairs)].sort())
    expect(refused.filter((row) => row.length !== 3 || row.some((cell) => cell === ''))).toEqual([])
  })

  it('names icons that the set has, and none that the table shows for the same word', () => {
    expect(refused.filter(([, picture = '']) => !icons.has(picture))).toEqual([])
    const shown = new Set(rows.map(([word, picture]) => `${word} ${picture}`))
    expect(refused.filter(([word, picture]) => shown.has(`${word} ${picture}`))).toEqual([])
  })
})
