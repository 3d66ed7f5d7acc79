// Sheets read back from the PDF by pdf.js: every word is there once, inside its card, off the edges and off one another.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Ask,
  drawPdf,
  type Laid,
  layCards,
  layList,
  laySight,
  laySlips,
  layStrips,
  layTags,
  layWall,
  PAPERS,
  type Picture,
  unmarked,
  type WordPiece,
} from '../../src/print/index.ts'
import type { Result } from '../../src/problem/index.ts'
import { testLetters } from './fonts.ts'
import { type ReadSheet, type ReadWord, readPdf } from './read-back.ts'

const EDGE = 8
const letters = testLetters()
const square: Picture = {
  kind: 'svg',
  svg: '<svg viewBox="0 0 10 10"><rect width="10" height="10"/></svg>',
  width: 10,
  height: 10,
}

const toAsk = (more: Partial<Ask> = {}): Ask => ({
  ...{ paper: PAPERS.a4, letters, cut: 'corners', size: 'usual', backs: 'none', pageWords: 14 },
  ...more,
})

const toPieces = (words: readonly string[]): readonly WordPiece[] =>
  words.map((word) => ({ text: unmarked(word), picture: { picture: square, alt: word } }))

const KINDS: Readonly<Record<string, (words: readonly string[], ask: Ask) => Result<Laid>>> = {
  cards: (words, ask) => layCards(toPieces(words), ask),
  list: (words, ask) => layList(toPieces(words), 'Words to read', ask),
  sight: (words, ask) => laySight(toPieces(words), ask),
  slips: (words, ask) => laySlips(words.map(unmarked), ask),
  tags: (words, ask) => layTags(toPieces(words), ask),
  wall: (words, ask) => layWall([{ head: 'a', words: toPieces(words) }], ask),
}

function toLaid(result: Result<Laid>): Laid {
  if (!result.ok) throw new Error(result.problems[0]?.message)
  return result.value
}

const print = async ({ sheets, duplex }: Laid) => readPdf(await drawPdf({ title: 'Test', sheets, duplex }, letters))

/** Without the line that says how to print. */
const isForChild = ({ size }: ReadWord): boolean => size > 5

function expectOffEdges({ width, height, words }: ReadSheet): void {
  for (const { text, x, y, width: wide, size } of words) {
    const place = `${text} at ${x}, ${y}`
    expect(x, place).toBeGreaterThan(EDGE - 0.01)
    expect(x + wide, place).toBeLessThan(width - EDGE + 0.01)
    expect(y - letters.ascent * size, place).toBeGreaterThan(EDGE - 0.01)
    expect(y, place).toBeLessThan(height - EDGE + 0.01)
  }
}

/** No two words touch: their boxes, from the tallest letter to the deepest, are apart. */
function expectApart({ words }: ReadSheet): void {
  const boxes = words.map(({ x, y, width, size, text }) => {
    return { text, left: x, right: x + width, top: y - letters.ascent * size, bottom: y + letters.descent * size }
  })
  boxes.forEach((one, at) => {
    for (const other of boxes.slice(at + 1)) {
      const meet = one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom
      expect(meet, `${one.text} and ${other.text}`).toBe(false)
    }
  })
}

const wordOf = fc.stringMatching(/^[a-z]{1,12}$/)

describe.each(Object.keys(KINDS))('%s', (kind) => {
  it.each(['a4', 'letter'] as const)('on %s holds each word once, off the edges and off one another', async (paper) => {
    const lay = KINDS[kind]
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(wordOf, { minLength: 1, maxLength: 24 }),
        fc.constantFrom<Ask['size']>('usual', 'small', 'large'),
        async (words, size) => {
          const laid = lay?.(words, toAsk({ paper: PAPERS[paper], size }))
          // A long word may be too wide for large letters, and is told then.
          if (!laid?.ok) return expect(laid?.problems[0]?.code).toBe('does-not-fit')
          const { sheets } = await print(laid.value)
          for (const sheet of sheets) {
            expectOffEdges(sheet)
            expectApart(sheet)
          }
          const printed = sheets.flatMap((sheet) => sheet.words.filter(isForChild).map(({ text }) => text))
          const expected = kind === 'wall' ? ['a', ...words] : words
          expect(printed.filter((text) => text !== 'Words to read').sort()).toEqual([...expected].sort())
        },
      ),
      { seed: 11, numRuns: 8 },
    )
  })
})

describe('cards', () => {
  const words = ['hat', 'log', 'pig', 'off', 'jam']

  it('have each word inside its own tag, on one line across a row', async () => {
    const laid = toLaid(layCards(toPieces(words), toAsk()))
    const { sheets } = await print(laid)
    const own = sheets[0]?.words.filter(isForChild) ?? []
    // Two columns of 80 mm and rows of 64 mm in the middle of the paper; the tag is the last 16 mm of a row.
    const [left, top] = [(210 - 160) / 2, (297 - 256) / 2]
    own.forEach(({ x, y, width, size }, at) => {
      const [column, row] = [at % 2, Math.floor(at / 2)]
      expect(x).toBeGreaterThan(left + column * 80 + 3)
      expect(x + width).toBeLessThan(left + (column + 1) * 80 - 3)
      expect(y - letters.ascent * size).toBeGreaterThan(top + row * 64 + 48)
      expect(y + letters.descent * size).toBeLessThan(top + (row + 1) * 64)
      expect(y).toBeCloseTo(own[row * 2]?.y ?? 0, 3)
    })
  })

  it('have backs that mirror their fronts', async () => {
    const laid = toLaid(layCards(toPieces(words), toAsk({ backs: 'words' })))
    const { sheets } = await print(laid)
    const [front = [], back = []] = sheets.map((sheet) => sheet.words.filter(isForChild))
    expect(laid.duplex).toBe('long-edge')
    for (const one of front) {
      const other = back.find(({ text }) => text === one.text)
      const toMiddle = ({ x, width }: ReadWord): number => x + width / 2
      expect(210 - toMiddle(one)).toBeCloseTo(other ? toMiddle(other) : 0, 1)
    }
  })
})

it('draws as many glyphs as letters: nothing is joined', async () => {
  const text = 'off fin cliff'
  const laid = toLaid(laySlips([unmarked(text)], toAsk({ cut: 'none' })))
  const items = laid.sheets[0]?.items.filter((item) => item.kind !== 'text' || item.ink === 'black') ?? []
  for (const name of ['andika', 'lexend', 'abeezee'] as const) {
    const own = testLetters(name)
    const bytes = await drawPdf({ title: 'Test', sheets: [{ width: 210, height: 297, items }], duplex: undefined }, own)
    expect((await readPdf(bytes)).sheets[0]?.glyphs, name).toBe(text.replaceAll(' ', '').length)
  }
})

it('cuts strips in loose words without losing one; the full stop stays with its word', async () => {
  const sentences = ['Meg sat in the tub.', 'Sid had a bun, and a hug!']
  const laid = toLaid(layStrips({ sentences: sentences.map(unmarked), pictures: [] }, true, toAsk()))
  const { sheets } = await print(laid)
  for (const sheet of sheets) expectOffEdges(sheet)
  const [whole = [], loose = []] = sheets.map((sheet) => sheet.words.filter(isForChild).map(({ text }) => text))
  expect(whole.join(' ')).toBe(sentences.join(' '))
  expect(loose.filter((text) => !/^[A-Z]$/.test(text) || text === 'I')).toEqual(sentences.join(' ').split(' '))
  expect(loose).toContain('bun,')
})

it('says which word is too wide', () => {
  const laid = layTags(toPieces(['hat', 'honorificabilitudinitatibus', 'cat']), toAsk())
  expect(laid.ok ? '' : laid.problems[0]?.message).toContain('`honorificabilitudinitatibus` is too wide for its tag')
})
