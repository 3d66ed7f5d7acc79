// Every reviewed picture as our PDF draws it, compared with a browser's drawing of the same file, cell by cell.

import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { expect, it } from 'vitest'
import { drawPdf, findStored, type PictureFile } from '../../src/print/index.ts'
import type { Item, Picture } from '../../src/print/sheet.ts'
import { testLetters } from './fonts.ts'

const BROWSER = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)
const stored = JSON.parse(readFileSync(new URL('../../dist/pictures.json', import.meta.url), 'utf8')) as PictureFile

/** Cells of 16 mm, four dots to the millimetre. */
const [CELL, DOTS, COLUMNS] = [16, 4, 20]

interface Difference {
  /** Share of the cell's dots that differ by more than a quarter of the scale. */
  readonly differing: number
  /** Share of the cell's dots that are not white, as we draw it. */
  readonly inked: number
}

async function drawOurs(pictures: readonly Picture[]): Promise<string> {
  const rows = Math.ceil(pictures.length / COLUMNS)
  const items = pictures.map(
    (picture, at): Item => ({
      ...{ kind: 'picture', picture, width: CELL, height: CELL },
      x: (at % COLUMNS) * CELL,
      y: Math.floor(at / COLUMNS) * CELL,
    }),
  )
  const sheet = { width: COLUMNS * CELL, height: rows * CELL, items }
  const bytes = await drawPdf({ title: 'Pictures', sheets: [sheet], duplex: undefined }, testLetters())
  const folder = mkdtempSync(join(tmpdir(), 'battledore-pictures-'))
  try {
    writeFileSync(join(folder, 'all.pdf'), bytes)
    const args = ['-r', String(DOTS * 25.4), '-png', '-singlefile', 'all.pdf', 'all']
    expect(spawnSync('pdftoppm', args, { cwd: folder }).status).toBe(0)
    return readFileSync(join(folder, 'all.png')).toString('base64')
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** What the browser has and Node has not. */
interface Drawable {
  src: string
  decode(): Promise<void>
}
interface Brush {
  fillStyle: string
  fillRect(x: number, y: number, width: number, height: number): void
  drawImage(image: Drawable, x: number, y: number): void
  getImageData(x: number, y: number, width: number, height: number): { readonly data: Uint8ClampedArray }
}
declare const Image: new () => Drawable
declare const OffscreenCanvas: new (width: number, height: number) => { getContext(kind: '2d'): Brush | null }

/** Runs in the browser: draws each picture there, and compares it with its cell of our drawing. */
async function compareInBrowser({ png, svgs, size, columns }: BrowserTask): Promise<Difference[]> {
  const load = async (source: string) => {
    const image = new Image()
    image.src = source
    await image.decode()
    return image
  }
  const toDots = (image: Drawable, x: number, y: number) => {
    const canvas = new OffscreenCanvas(size, size)
    const context = canvas.getContext('2d')
    if (!context) throw new Error('no canvas')
    context.fillStyle = '#fff'
    context.fillRect(0, 0, size, size)
    context.drawImage(image, x, y)
    return context.getImageData(0, 0, size, size).data
  }
  const ours = await load(`data:image/png;base64,${png}`)
  const found: Difference[] = []
  for (const [at, svg] of svgs.entries()) {
    const theirs = await load(
      `data:image/svg+xml,${encodeURIComponent(svg.replace('<svg', `<svg width="${size}" height="${size}"`))}`,
    )
    const one = toDots(ours, -(at % columns) * size, -Math.floor(at / columns) * size)
    const other = toDots(theirs, 0, 0)
    let [differing, inked] = [0, 0]
    for (let dot = 0; dot < one.length; dot += 4) {
      const by = [0, 1, 2].map((part) => Math.abs((one[dot + part] ?? 0) - (other[dot + part] ?? 0)))
      if (Math.max(...by) > 64) differing++
      if (Math.min(one[dot] ?? 0, one[dot + 1] ?? 0, one[dot + 2] ?? 0) < 250) inked++
    }
    found.push({ differing: differing / size ** 2, inked: inked / size ** 2 })
  }
  return found
}

interface BrowserTask {
  readonly png: string
  readonly svgs: readonly string[]
  readonly size: number
  readonly columns: number
}

const canDraw = BROWSER !== undefined && spawnSync('pdftoppm', ['-v']).error === undefined

it.skipIf(!canDraw).each([
  ['in colour', false],
  ['in grey', true],
])('every reviewed picture is drawn %s as a browser draws it', async (_, isGrey) => {
  const words = Object.keys(stored)
  expect(words.length).toBeGreaterThan(299)
  const pictures = words.map((word) => findStored(stored, word, isGrey)?.picture as Picture & { kind: 'svg' })
  const png = await drawOurs(pictures)
  const browser = await chromium.launch({ ...(BROWSER && { executablePath: BROWSER }), args: ['--no-sandbox'] })
  try {
    const page = await browser.newPage()
    const task = { png, svgs: pictures.map(({ svg }) => svg), size: CELL * DOTS, columns: COLUMNS }
    const found = await page.evaluate(compareInBrowser, task)
    // Edges are softened differently; a picture that lost a part differs by more.
    const wrong = words.filter((_word, at) => (found[at]?.differing ?? 1) > 0.03 || (found[at]?.inked ?? 0) < 0.02)
    expect(wrong).toEqual([])
  } finally {
    await browser.close()
  }
})
