// `battledore print` from words and stories to what stands on paper.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { readPdf } from '../../print/read-back.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld

beforeEach(() => {
  world = createWorld()
})
afterEach(() => world.remove())

const print = (...args: string[]): Promise<number> => main(['print', ...args], world.io)

async function readWords(path: string): Promise<readonly string[]> {
  const { sheets } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/${path}`))
  return sheets.flatMap(({ words }) => words.filter(({ size }) => size > 5).map(({ text }) => text))
}

const SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>'

it('prints the words that are named, and says which cannot be read yet', async () => {
  expect(await print('tags', '--step', 'pink-3', '--words', 'hat, rain, won')).toBe(0)
  expect(await readWords('tags-pink-3.pdf')).toEqual(['hat', 'rain', 'won'])
  expect(world.err().replaceAll('\n', ' ')).toMatch(
    /`rain` cannot be read at pink-3: it can from green-\d+ on\. It is printed all the same\./,
  )
  expect(world.err()).not.toContain('`hat`')
})

it('takes the maker’s own pictures first, and says which frames are empty', async () => {
  world.write({ 'mine/Hat-2.SVG': SVG })
  expect(await print('cards', '--step', 'pink-4', '--words', 'hat,zot', '--pictures', 'mine', '--no-own-set')).toBe(0)
  expect(world.err()).toContain('No picture for zot: an empty frame to draw in.')
  const { units } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/cards-pink-4.pdf`))
  expect(units.map(({ role, text, alt }) => (role === 'Figure' ? alt : text))).toEqual([
    'hat',
    'hat',
    'An empty frame to draw in',
    'zot',
  ])
})

it('finds no word that is unfit or cannot be read', async () => {
  expect([await print('list', '--step', 'pink-2', '--count', '20'), world.err()]).toEqual([0, ''])
  const words = await readWords('list-pink-2.pdf')
  expect(words).toHaveLength(20)
  for (const word of words) expect(word).toMatch(/^[amstcrpnhfildgb]{2,3}$/)
})

it.each(['a4', 'letter'])('prints a word bank on one page of %s, read aloud part by part', async (paper) => {
  expect([await print('bank', '--step', 'green-4', '--paper', paper), world.err()]).toEqual([0, ''])
  const { sheets, units } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/bank-green-4.pdf`))
  expect(sheets).toHaveLength(1)
  const heads = units.filter(({ role }) => role === 'H2').map(({ text }) => text.trim())
  expect(heads).toEqual(['Naming words', 'Doing words', 'What happened (past)', 'Describing words', 'Little words'])
  const said = units.map(({ text }) => text).join('\n')
  for (const word of ['cake+', 'went', 'made+', 'said*', 'Endings: -s (cats).']) expect(said).toContain(word)
  expect(said).toMatch(/^a_e .*\bcame\+/m)
})

it('keeps notes from the child and gives them to the grown-up', async () => {
  world.write({
    'tam.md':
      '---\nstep: pink-4\nnames: [Zoe]\n---\n\n# Tam and the Hat\n\n> Read it first.\n\nTam had a hat.\n\n---\n\nZoe sat on the **hat**.\n\n> Ask who sat.\n',
  })
  expect(await print('book', 'tam.md')).toBe(0)
  const { sheets, units } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/book-tam.pdf`))
  const child = sheets.flatMap(({ words }) => words.filter(({ size }) => size > 5).map(({ text }) => text)).join(' ')
  expect(child).not.toMatch(/Read it|Ask who/)
  const all = units.map(({ text }) => text)
  expect(all).toEqual(
    expect.arrayContaining(['Page 1: Read it first.', 'Page 2: Ask who sat.', 'Tell these names: Zoe.']),
  )
  expect(all.join(' ')).toContain('It assesses no child.')
})

it('ends with 1 where it is asked to and a story holds words that cannot be read', async () => {
  world.write({ 'won.md': '---\nstep: pink-4\n---\n\nTam won a hat.\n' })
  expect(await print('book', 'won.md')).toBe(0)
  expect(world.err()).toContain('1 word of won.md cannot be read at pink-4')
  expect(await print('strips', 'won.md', '--fail-on', 'error')).toBe(1)
})

it('prints to a pipe what it writes to a file', async () => {
  await print('tags', '--step', 'pink-4', '--words', 'hat')
  const before = world.out().length
  await print('tags', '--step', 'pink-4', '--words', 'hat', '--out', '-')
  expect(world.out().slice(before)).toBe(world.io.fs.readFileSync(`${world.cwd}/tags-pink-4.pdf`, 'latin1'))
})

it('marks the letters that are practised, in bold over a bar', async () => {
  await print('tags', '--step', 'green-2', '--words', 'rain', '--with', 'ai', '--mark', 'practised')
  const { sheets } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/tags-green-2-ai.pdf`))
  const words = sheets.flatMap((sheet) => sheet.words.filter(({ size }) => size > 5))
  expect(words.map(({ text }) => text)).toEqual(['r', 'ai', 'n'])
})

it('makes a set with a page of contents for the maker', async () => {
  expect(await print('set', '--step', 'pink-4', '--vowel', 'u')).toBe(0)
  const { sheets, units } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/set-pink-4-u.pdf`))
  const text = units.map((unit) => unit.text).join('\n')
  expect(text).toContain('small-parts test (US 16 CFR 1501; EU EN 71-1)')
  const named = [...text.matchAll(/^Sheets? (\d+)(?: to (\d+))?: /gm)].map(({ 1: from, 2: to }) => Number(to ?? from))
  expect(named.at(-1)).toBe(sheets.length)
})

it('draws each sheet as an SVG of the same size', async () => {
  expect(await print('sight', '--step', 'pink-6', '--format', 'svg', '--out', 's.svg')).toBe(0)
  const svg = world.read('s-1.svg')
  expect(svg).toMatch(/^<svg [^>]*width="210mm" height="297mm"/)
  expect(svg).toContain('aria-label="the"')
})

it('takes the paper of the folder, unless another is asked for', async () => {
  world.write({ 'battledore.yaml': 'paper: letter\n' })
  const toWidth = async (...more: string[]) => {
    expect(await print('tags', '--step', 'pink-4', '--words', 'hat', ...more)).toBe(0)
    return (await readPdf(world.io.fs.readFileSync(`${world.cwd}/tags-pink-4.pdf`))).sheets[0]?.width
  }
  expect(await toWidth()).toBeCloseTo(215.9, 3)
  expect(await toWidth('--paper', 'a4')).toBeCloseTo(210, 3)
})

it('prints named words without a step, and says that nothing was judged', async () => {
  expect(await print('tags', '--words', "Tam's, HAT, rain")).toBe(0)
  expect(await readWords('tags.pdf')).toEqual(["Tam's", 'HAT', 'rain'])
  expect(world.err().replaceAll('\n', ' ')).toMatch(/^No step is named, so nothing was judged/)
  world.write({ 'battledore.yaml': 'step: pink-3\n' })
  expect(await print('tags', '--words', 'hat, rain')).toBe(0)
  expect(world.err()).toContain('`rain` cannot be read at pink-3')
})

it('judges a story for the reader who is named', async () => {
  world.write({
    'meg.yaml': 'name: Meg\nsequence: series\nstep: pink-4\nknows:\n  sight words: [rain]\n',
    'tam.md': '---\nstep: pink-4\n---\n\n# Tam\n\nTam had rain.\n',
  })
  for (const kind of ['book', 'strips', 'slips']) {
    expect(await print(kind, 'tam.md', '--reader', 'meg.yaml', '--fail-on', 'error')).toBe(0)
    expect(await print(kind, 'tam.md', '--fail-on', 'error')).toBe(1)
  }
  expect(world.err().replaceAll('\n', ' ')).toContain('Judged for Meg, at pink-4 (meg.yaml).')
})

it('puts a small number on the outside of each slip', async () => {
  expect(await print('slips', '--words', 'hop,run,sit', '--numbers')).toBe(0)
  const { sheets } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/slips.pdf`))
  expect(sheets).toHaveLength(2)
  expect(sheets[1]?.words.map(({ text }) => text)).toEqual(['1', '2', '3'])
  expect(world.out().replaceAll('\n', ' ')).toContain('long edge')
})

it('spaces letters wider', async () => {
  const toWidth = async (spacing: string): Promise<number> => {
    expect(await print('tags', '--words', 'mat', '--size', '6', '--spacing', spacing)).toBe(0)
    const { sheets } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/tags.pdf`))
    return sheets[0]?.words.find(({ text }) => text === 'mat')?.width ?? 0
  }
  expect(await toWidth('wider')).toBeGreaterThan((await toWidth('usual')) + 1)
})
