// What axe-core finds on the page (WCAG 2.2 A and AA, best practice), and what a finger would miss.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { type OpenBrowser, openPage } from '../../../scripts/browser/browsers.ts'
import { ROOT } from '../../console.ts'

const AXE = readFileSync(join(ROOT, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8')

/** What axe finds, one line each; in both colours. */
async function findFaults(page: Page, state: string): Promise<readonly string[]> {
  const found: string[] = []
  for (const value of ['light', 'dark']) {
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }])
    const faults = (await page.evaluate(
      `axe.run(document, { resultTypes: ['violations'] }).then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ': ' + html.slice(0, 150))))`,
    )) as readonly string[]
    found.push(...faults.map((fault) => `${state}, ${value}: ${fault}`))
  }
  return found
}

/** What a finger would miss: less than 44 px high or wide. Marked words stand in the text, and the list of places leads to them too. */
const findSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const inner = document.querySelector('dialog[open]') ?? document
    return [...inner.querySelectorAll('button, input, select, summary, textarea')].flatMap((one) => {
      const { width, height } = (one.closest('label.tick') ?? one).getBoundingClientRect()
      const isSeen = width > 0 && one.closest('.leaf') === null
      return isSeen && (height < 43.5 || width < 43.5) ? [`${one.outerHTML.slice(0, 90)} ${width} × ${height}`] : []
    })
  })

export async function openDesk(open: OpenBrowser, address: string, width: number, height: number): Promise<Page> {
  const { page } = await openPage(open, width, height)
  await page.goto(address)
  await page.waitForSelector('.shelf :is(table, .empty)')
  await page.evaluate(AXE)
  return page
}

/** Wide, as a tablet, as a phone, and 200 % of the first. */
export const SIZES = [
  [1280, 800],
  [768, 1024],
  [360, 740],
  [640, 400],
] as const

export interface Looker {
  readonly faults: readonly string[]
  /** @param wait what shows that the page is in this state */
  look(state: string, wait: string): Promise<void>
}

/** Looks at one state after the other, and keeps what is found. */
export function createLooker(page: Page): Looker {
  const faults: string[] = []
  return {
    faults,
    async look(state, wait) {
      await page.waitForSelector(wait)
      faults.push(...(await findFaults(page, state)), ...(await findSmall(page)).map((small) => `${state}: ${small}`))
    },
  }
}
