// The PDF as other programs see it: read in order, the same bytes each time, whole for qpdf and poppler.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Ask, type Book, drawPdf, layBook, PAPERS, type Picture, unmarked } from '../../src/print/index.ts'
import { testLetters } from './fonts.ts'
import { readPdf } from './read-back.ts'

const letters = testLetters()
const ask: Ask = {
  ...{ paper: PAPERS.a4, letters, cut: 'corners', size: 'usual', backs: 'none', pageWords: 14 },
}
const hen: Picture = {
  kind: 'svg',
  svg: '<svg viewBox="0 0 10 10"><circle cx="5" cy="5" r="4" fill="#c60"/></svg>',
  width: 10,
  height: 10,
}

const toBook = (texts: readonly string[], withPictures = false): Book => ({
  title: 'Tam and the Hat',
  cover: { picture: hen, alt: 'a hen on the cover' },
  pages: texts.map((text, at) => ({
    number: at + 1,
    place: `tam.md:${at + 1}:1`,
    blocks: [{ kind: 'paragraph', text: unmarked(text) }],
    above: withPictures ? [{ picture: hen, alt: `hen ${at + 1}` }] : [],
    below: [],
  })),
  grownUp: ['For the grown-up', 'It assesses no child.'],
})

const FOLDS = ['staple', 'one-sheet', 'none'] as const

async function print(book: Book, fold: (typeof FOLDS)[number], more: Partial<Ask> = {}) {
  const laid = layBook(book, fold, { ...ask, ...more })
  if (!laid.ok) throw new Error(laid.problems[0]?.message)
  const { sheets, duplex } = laid.value
  return drawPdf({ title: book.title, sheets, duplex }, letters)
}

const TEXTS = ['Tam had a hat.', 'Tam sat on the hat.', 'The hat is bad.', 'Tam is sad.', 'Zub got the hat.']

describe.each(FOLDS)('a book with --fold %s', (fold) => {
  it('is read aloud in order, each picture with its words', async () => {
    // poppler reads the structure over all sheets; pdf.js only sheet by sheet, where a folded sheet is never in order.
    const folder = mkdtempSync(join(tmpdir(), 'battledore-pdf-'))
    try {
      writeFileSync(join(folder, 'book.pdf'), await print(toBook(TEXTS, true), fold))
      const { stdout, error } = spawnSync('pdfinfo', ['-struct-text', 'book.pdf'], { cwd: folder, encoding: 'utf8' })
      if (error) return console.warn('poppler is not installed: the order of reading was not checked')
      const read = [...stdout.matchAll(/^\s*"(.*)"$/gm)].map(({ 1: text = '' }) => text).join(' ')
      const wanted = ['Tam and the Hat', ...TEXTS, 'For the grown-up', 'It assesses no child.']
      expect(read.replace(/\s+/g, ' ').trim()).toBe(wanted.join(' '))
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })

  it('has an alt text for each picture', async () => {
    const { units } = await readPdf(await print(toBook(TEXTS, true), fold))
    const alts = units.filter(({ role }) => role === 'Figure').map(({ alt }) => alt)
    expect(alts.sort()).toEqual(['a hen on the cover', ...TEXTS.map((_, at) => `hen ${at + 1}`)].sort())
  })

  it('is the same byte for byte', async () => {
    expect(Buffer.compare(await print(toBook(TEXTS), fold), await print(toBook(TEXTS), fold))).toBe(0)
  })

  it('keeps every word of random stories, whole and 8 mm off the edges', async () => {
    const word = fc.stringMatching(/^[a-z]{1,7}$/)
    const sentence = fc.array(word, { minLength: 1, maxLength: 8 }).map((words) => `${words.join(' ')}.`)
    await fc.assert(
      fc.asyncProperty(fc.array(sentence, { minLength: 1, maxLength: 6 }), async (texts) => {
        const { sheets } = await readPdf(await print(toBook(texts), fold))
        const own = sheets.flatMap(({ words }) => words)
        for (const { width, height, words } of sheets)
          for (const { x, y, width: wide } of words) {
            expect(x).toBeGreaterThan(7.99)
            expect(x + wide).toBeLessThan(width - 7.99)
            expect(y).toBeGreaterThan(7.99)
            expect(y).toBeLessThan(height - 7.99)
          }
        const printed = own.flatMap(({ text }) => text.split(' ')).sort()
        const extra = ['Tam', 'and', 'the', 'Hat', 'For', 'the', 'grown-up', 'It', 'assesses', 'no', 'child.']
        const hint = 'Print at 100 %: this line is 50 mm long.'.split(' ')
        const numbers = texts.map((_, at) => String(at + 1))
        expect(printed).toEqual([...texts.flatMap((text) => text.split(' ')), ...extra, ...hint, ...numbers].sort())
      }),
      { seed: 5, numRuns: 10 },
    )
  })
})

it('stands the upper row of one sheet on its head, and no other', async () => {
  const { sheets } = await readPdf(await print(toBook(TEXTS), 'one-sheet'))
  for (const { y, isUpsideDown, text } of sheets[0]?.words ?? []) expect(isUpsideDown, text).toBe(y < 105)
})

it('has its title, language and hints, its own fonts and no others', async () => {
  const bytes = await print(toBook(TEXTS), 'staple')
  const { metadata, markInfo, viewer } = await readPdf(bytes)
  expect(metadata).toMatchObject({
    Title: 'Tam and the Hat',
    Producer: 'Battledore',
    PDFFormatVersion: '1.7',
    Language: 'en',
  })
  expect(markInfo?.Marked).toBe(true)
  expect(viewer).toMatchObject({ DisplayDocTitle: true, PrintScaling: 'None', Duplex: 'DuplexFlipShortEdge' })
  const text = Buffer.from(bytes).toString('latin1')
  const fonts = new Set([...text.matchAll(/\/BaseFont \/(\S+)/g)].map(({ 1: name }) => name))
  for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+Andika/)
})

it('is whole for qpdf and poppler', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-pdf-'))
  try {
    writeFileSync(join(folder, 'book.pdf'), await print(toBook(TEXTS, true), 'staple'))
    const run = (command: string, ...args: string[]) => spawnSync(command, args, { cwd: folder, encoding: 'utf8' })
    const qpdf = run('qpdf', '--check', 'book.pdf')
    if (qpdf.error) console.warn('qpdf is not installed: the file was not checked by it')
    else expect([qpdf.status, qpdf.stderr]).toEqual([0, ''])
    const poppler = run('pdftoppm', '-r', '20', '-png', 'book.pdf', 'page')
    if (poppler.error) console.warn('poppler is not installed: the file was not drawn by it')
    else expect([poppler.status, poppler.stderr]).toEqual([0, ''])
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})

it('tells the page that does not fit, and the story that does not go on one sheet', () => {
  const long = layBook(toBook([TEXTS.join(' ').repeat(12)]), 'staple', ask)
  expect(long.ok ? '' : long.problems[0]?.message).toBe(
    'tam.md:1:1: page 1 does not fit, even in the smallest letters (3.9 mm)',
  )
  const many = layBook(toBook([...TEXTS, ...TEXTS]), 'one-sheet', ask)
  expect(many.ok ? '' : many.problems[0]?.message).toMatch(/^The story has 10 pages; one sheet holds 6/)
})
