// Book and Print of the desk: the same bytes as `battledore print`, and marks that lie on the words, as pdf.js reads them back.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import type { BookWish, PrintKind, PrintWish } from '../../../src/desk/core/questions.ts'
import { createWorld } from '../../cli/io.ts'
import { ROOT } from '../../console.ts'
import { readPdf } from '../../print/read-back.ts'
import { filesInMemory, openDesk } from './host.ts'

const FOLDER = join(ROOT, 'fixtures', 'print')
const files = Object.fromEntries(
  readdirSync(FOLDER).map((name) => [name, new Uint8Array(readFileSync(join(FOLDER, name)))]),
)
const TUB = new TextDecoder().decode(files['tub.md'])
const world = createWorld(files)
afterAll(() => world.remove())
const desk = await openDesk(filesInMemory(files))

const tub = { path: 'tub.md', text: TUB, version: 2 }
const WISH = { paper: 'a4', letters: 'andika', size: 'usual', fold: 'staple' } as const satisfies BookWish
const wishFor = (kind: PrintKind, more: Partial<PrintWish> = {}): PrintWish => ({
  ...{ kind, paper: 'a4', letters: 'andika', size: 'usual', mark: 'none' },
  ...more,
})

async function printByCommand(args: readonly string[]): Promise<Uint8Array> {
  expect(await main(['print', ...args, '--out', 'out.pdf', '--force'], world.io), world.err()).toBe(0)
  return new Uint8Array(world.io.fs.readFileSync(join(world.cwd, 'out.pdf')))
}

const SHEETS: readonly (readonly [PrintKind, readonly string[], Partial<PrintWish>])[] = [
  ['booklet', ['book', 'tub.md'], {}],
  [
    'booklet',
    ['book', 'tub.md', '--mark', 'practised', '--letters', 'lexend'],
    { mark: 'practised', letters: 'lexend' },
  ],
  ['one-sheet booklet', ['book', 'tub.md', '--fold', 'one-sheet'], {}],
  ['pages', ['book', 'tub.md', '--fold', 'none', '--paper', 'letter'], { paper: 'letter' }],
  ['strips', ['strips', 'tub.md', '--size', 'large'], { size: 'large' }],
  ['tags', ['tags', '--step', 'pink-5', '--words', 'hat,tub'], { words: ['hat', ' tub', 'hat'] }],
  ['list', ['list', '--step', 'pink-5'], {}],
  [
    'cards',
    ['cards', '--step', 'pink-5', '--count', '8', '--vowel', 'u as in cup'],
    { bank: { vowel: 'u as in cup', count: 8 } },
  ],
  ['sight words', ['sight', '--step', 'pink-5'], {}],
  ['slips', ['slips', '--step', 'pink-5'], {}],
  ['word wall', ['wall', '--step', 'pink-5', '--group', 'ending'], { group: 'ending' }],
  ['lesson set', ['set', 'tub.md', '--step', 'pink-5'], {}],
  ['lesson set', ['set', 'tub.md', '--step', 'pink-5', '--vowel', 'u as in cup'], { bank: { vowel: 'u as in cup' } }],
]

it.each(SHEETS)('%s: the bytes of `print %j`', async (kind, args, more) => {
  const printed = await desk.ask({ kind: 'print', story: tub, wish: wishFor(kind, more) })
  if (!printed.ok) throw new Error(printed.problems[0]?.message)
  const { pdf, fileName, told, sheets } = printed.value
  expect(fileName).toMatch(/^[a-z0-9-]+\.pdf$/)
  expect(told[0]).toContain('Print at 100 %')
  expect(told.join()).not.toMatch(/--[a-z]|battledore/)
  const read = await readPdf(pdf)
  expect(sheets).toBeGreaterThanOrEqual(read.sheets.length / 2)
  const texts = async (bytes: Uint8Array) => (await readPdf(bytes)).units.map(({ text }) => text)
  expect(await texts(pdf)).toEqual(await texts(await printByCommand(args)))
  expect(Buffer.from(pdf).equals(Buffer.from(await printByCommand(args)))).toBe(true)
})

it('shows the pages as they are bound, and what lies open together', async () => {
  const book = await desk.ask({ kind: 'book', story: tub, wish: WISH })
  if (!book.ok) throw new Error(book.problems[0]?.message)
  const { pages, spreads, ratio, version, told } = book.value
  expect({ version, told, pages: pages.length }).toEqual({ version: 2, told: [], pages: 8 })
  expect(ratio).toBeCloseTo(148.5 / 210, 3)
  expect(pages.every((svg) => svg.startsWith('<svg '))).toBe(true)
  expect(pages[0]).toMatch(/aria-label="Tam and".*aria-label="the Tub"/s)
  expect(spreads.map(({ name }) => name)).toEqual([
    'Cover',
    'Pages 1 and 2',
    'Pages 3 and 4',
    'Pages 5 and 6',
    'Back: for the grown-up',
  ])
  expect(
    spreads
      .flatMap(({ left, right }) => [left, right])
      .filter((page) => page !== null)
      .sort(),
  ).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
})

it('lays marks on the words with a place', async () => {
  const text =
    '---\nstep: pink-4\n---\n\n# Tam Won\n\nTam had a hat.\n\n---\n\n![a hat](hat.svg)\n\nTam **won** the hat and won\nit at ni**gh**t.\n'
  const story = { path: 'won.md', text, version: 1 }
  const [book, check, printed] = await Promise.all([
    desk.ask({ kind: 'book', story, wish: WISH }),
    desk.ask({ kind: 'check', story }),
    desk.ask({ kind: 'print', story, wish: wishFor('booklet') }),
  ])
  if (!book.ok || !check.checked || !printed.ok) throw new Error('it can be printed')
  const wordOf = (place: number) => check.places[place]?.word
  expect(book.value.marks.map(({ page, place }) => [page, wordOf(place)])).toEqual([
    [0, 'Won'],
    [2, 'won'],
    [2, 'won'],
    [2, 'night'],
  ])
  // Sheet by sheet of a stapled booklet of four pages: back and cover, pages 1 and 2.
  const { sheets } = await readPdf(printed.value.pdf)
  const words = sheets[1]?.words.filter(({ x }) => x > 148.5) ?? []
  const [bold, plain, night] = book.value.marks
    .filter(({ page }) => page === 2)
    .map(({ x, y, width, height }) => ({
      left: x * 148.5 + 148.5,
      right: (x + width) * 148.5 + 148.5,
      top: y * 210,
      bottom: (y + height) * 210,
    }))
  const find = (text: string) => words.find((word) => word.text === text)
  // The letters that a font draws by themselves are told by pdf.js, and so is the beginning of a line.
  expect(bold?.left).toBeCloseTo(find('won')?.x ?? 0, 1)
  expect((bold?.right ?? 0) - (bold?.left ?? 0)).toBeCloseTo(find('won')?.width ?? 0, 1)
  expect(plain?.left).toBeCloseTo(words.find(({ text }) => text.startsWith('won it'))?.x ?? 0, 1)
  const [gh, t] = [find('gh'), find('t.')]
  expect(night?.left).toBeLessThan(gh?.x ?? 0)
  expect(night?.right).toBeGreaterThan(t?.x ?? 0)
  expect(night?.right).toBeLessThan((t?.x ?? 0) + (t?.width ?? 0))
  expect([night?.top, gh?.y, night?.bottom]).toEqual(
    [night?.top, gh?.y, night?.bottom].sort((one = 0, other = 0) => one - other),
  )
})

it('puts an empty frame where a picture is missing, and says so', async () => {
  const text = TUB.replace('(mug.svg)', '(none.png)').replace('(sun.svg)', '(https://example.org/sun.svg)')
  const story = { path: 'tub.md', text, version: 1 }
  const book = await desk.ask({ kind: 'book', story, wish: WISH })
  expect(book.ok && book.value.told).toEqual([
    'Page 1: the picture `https://example.org/sun.svg` is on the web, and is never fetched: save it beside the story. An empty frame stands in its place.',
    'Page 3: the picture `none.png` is not there. An empty frame stands in its place.',
  ])
  const printed = await desk.ask({ kind: 'print', story, wish: wishFor('booklet') })
  expect(printed.ok && printed.value.told.join()).toContain('`none.png` is not there')
})

it('says in one line what cannot be printed', async () => {
  const long = { path: 'a.md', version: 1, text: `---\nstep: pink-4\n---\n\n${'Tam had a hat. '.repeat(200)}\n` }
  const book = await desk.ask({ kind: 'book', story: long, wish: { ...WISH, fold: 'one-sheet' } })
  expect(book).toMatchObject({ ok: false, problems: [{ code: 'does-not-fit' }] })
  expect(JSON.stringify(book)).not.toContain('--')
  for (const wish of [
    wishFor('booklet', { letters: 'none' }),
    wishFor('tags', { words: [] }),
    wishFor('cards', { bank: { vowel: 'zz' } }),
  ]) {
    const answer = await desk.ask({ kind: 'print', story: tub, wish })
    expect(answer).toMatchObject({ ok: false, problems: [{ message: expect.any(String) }] })
    expect(JSON.stringify(answer)).not.toMatch(/--[a-z]/)
  }
})
