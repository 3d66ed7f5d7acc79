// `npm run screens`: the pictures of docs/desk.md, of the page as it is today. Needs chromium and ImageMagick.

import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { openBrowser, openPage } from '../browser/browsers.ts'
import { runDesk } from '../browser/desk.ts'
import { ROOT } from '../root.ts'

interface Screen {
  readonly name: string
  /** From the open story; `undefined` is the shelf. */
  readonly story: string | undefined
  reach(page: Page): Promise<void>
}

async function press(page: Page, name: string): Promise<void> {
  const button = await page.waitForFunction(
    (wanted) =>
      [...document.querySelectorAll('button')].find(
        (one) => (one.getAttribute('aria-label') ?? one.textContent)?.trim() === wanted,
      ) ?? null,
    {},
    name,
  )
  await (button as unknown as { click(): Promise<void> }).click()
}

const SCREENS: readonly Screen[] = [
  {
    name: 'shelf',
    story: undefined,
    async reach(page) {
      await press(page, 'A Duck at the Pond')
      await page.waitForSelector('.figures')
    },
  },
  {
    name: 'write',
    story: 'A Duck at the Pond',
    async reach(page) {
      await page.waitForSelector('mark')
      // By finger or mouse on the text, or by F8, it is the same card.
      await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.index button')].find((one) => one.textContent === 'won')?.click(),
      )
      await page.waitForFunction(() => document.querySelector('.fixes .word') !== null)
    },
  },
  {
    name: 'words',
    story: 'Rain on Tansy Lane',
    async reach(page) {
      await page.click('#tab-words')
      await page.waitForSelector('.bank button')
    },
  },
  {
    name: 'book',
    story: 'The Ship in the Shed',
    async reach(page) {
      await press(page, 'Book')
      await page.waitForSelector('.leaf img')
      await press(page, 'Next')
      await page.waitForFunction(() => document.querySelectorAll('.leaf img').length === 2)
    },
  },
]

const target = join(ROOT, 'docs', 'screens')
const folder = mkdtempSync(join(tmpdir(), 'battledore-screens-'))

/** Few colours, so that the repository stays small; no date. */
function makeSmall(path: string): void {
  const small = ['-resize', '75%', '-colors', '64', '-depth', '8', '-strip', '-define', 'png:exclude-chunks=date,time']
  const { status, stderr } = spawnSync('convert', [path, ...small, `PNG8:${path}`], { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
}

mkdirSync(target, { recursive: true })
const shelf = join(folder, 'tansy-lane')
cpSync(join(ROOT, 'fixtures', 'shelf'), shelf, { recursive: true })
const desk = await runDesk(shelf)
const open = await openBrowser('chromium')
try {
  for (const { name, story, reach } of SCREENS) {
    const { page } = await openPage(open, 1280, 800)
    await page.goto(desk.address)
    await page.waitForSelector('table')
    if (story !== undefined) await press(page, `Open ${story}`)
    await reach(page)
    await page.evaluate(() => document.fonts.ready)
    const path = join(target, `${name}.png`)
    await page.screenshot({ path: path as `${string}.png` })
    makeSmall(path)
    await page.close()
  }
} finally {
  await open.browser.close()
  await desk.close()
  rmSync(folder, { recursive: true })
}
