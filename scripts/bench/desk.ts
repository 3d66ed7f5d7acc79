// The writing desk in Chromium: how soon the first verdict stands, what a key costs, and how large the one file is.

import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { openBrowser } from '../browser/browsers.ts'
import { runDesk } from '../browser/desk.ts'
import { serveWorker, startInPage, timeInPage } from '../browser/worker.ts'
import { ROOT } from '../root.ts'
import { benchKeys } from './desk-keys.ts'
import { type Row, toMedian } from './measure.ts'
import { makeStories } from './stories.ts'

/** Milliseconds, characters and bytes. */
const FIRST = 1500
const FIVE = { size: 5_000, limit: 50 }
const FIFTY = { size: 50_000, limit: 150 }
const ONE_FILE = 6_000_000

export async function benchDesk(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-desk-'))
  const texts = [FIVE, FIFTY].map(({ size }) => makeText(size))
  writeFileSync(join(folder, 'five.md'), texts[0] ?? '')
  writeFileSync(join(folder, 'fifty.md'), texts[1] ?? '')
  const { browser } = await openBrowser('chromium')
  try {
    return [
      ...(await benchWorker(await browser.newPage(), texts)),
      ...(await benchFirst(folder, () => browser.newPage())),
      ...(await benchKeys(folder, () => browser.newPage())),
      toSizeRow(),
    ]
  } finally {
    await browser.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** One story of about this size, most of its sentences for its step. */
function makeText(size: number): string {
  const [story] = makeStories(1, 7, { size })
  const title = size > 10_000 ? 'Fifty' : 'Five'
  return (story?.text ?? '').replace(/^# .*$/m, `# ${title}`)
}

async function benchWorker(page: Page, texts: readonly string[]): Promise<Row[]> {
  const served = await serveWorker()
  try {
    await startInPage(page, served, {})
    const rows: Row[] = []
    for (const [at, { size, limit }] of [FIVE, FIFTY].entries()) {
      const text = texts[at] ?? ''
      const ask = (path: string, version: number, own: string): Promise<number> =>
        timeInPage(page, { kind: 'check', story: { path, text: own, version } })
      const [whole, typed]: [number[], number[]] = [[], []]
      for (let run = 0; run < 24; run++) {
        // A story by another name is read as one that nobody has seen; the other has got a word more.
        whole.push(await ask(`${run}.md`, run, text))
        typed.push(await ask('open.md', run, toTyped(text, run)))
      }
      const [first, next] = [toMedian(whole.slice(4)), toMedian(typed.slice(4))]
      rows.push({
        what: `a check in the worker, ${size / 1000} KB, warm: after a key, against the whole story`,
        figure: `${next.toFixed(0)} ms, ${(next / first).toFixed(2)} × (the whole story ${first.toFixed(0)} ms)`,
        wanted: `≤ ${limit} ms`,
        holds: next <= limit,
      })
    }
    return rows
  } finally {
    await page.close()
    await served.stop()
  }
}

/** A word longer in its middle, another one each time. */
function toTyped(text: string, run: number): string {
  const at = text.indexOf('. ', text.length >> 1)
  return `${text.slice(0, at)} and Tam ran${' on'.repeat(run % 5)}${text.slice(at)}`
}

/** From a cold page to the first verdict: the page is opened, the story is pressed as soon as it stands there. */
async function benchFirst(folder: string, openPage: () => Promise<Page>): Promise<Row[]> {
  const times: number[] = []
  for (let run = 0; run < 5; run++) {
    const desk = await runDesk(folder)
    const page = await openPage()
    try {
      const start = performance.now()
      await page.goto(desk.address)
      const open = await page.waitForSelector('[aria-label="Open Five"]')
      await open?.click()
      await page.waitForSelector('.cm-content mark')
      times.push(performance.now() - start)
    } finally {
      await page.close()
      await desk.close()
    }
  }
  const median = toMedian(times)
  return [
    {
      what: 'from a cold page by way of the shelf to the first verdict on the screen, 5 KB',
      figure: `${(median / 1000).toFixed(2)} s (${times.map((one) => (one / 1000).toFixed(2)).join(', ')})`,
      wanted: `≤ ${FIRST / 1000} s`,
      holds: median <= FIRST,
    },
  ]
}

function toSizeRow(): Row {
  const { size } = statSync(join(ROOT, 'dist', 'battledore-desk.html'))
  return {
    what: 'the page as one HTML file, with PDF, letters and pictures',
    figure: `${(size / 1e6).toFixed(2)} MB`,
    wanted: `≤ ${ONE_FILE / 1e6} MB`,
    holds: size <= ONE_FILE,
  }
}
