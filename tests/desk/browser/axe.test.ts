// Every state of the page before axe-core (WCAG 2.2 A and AA, best practice), light and dark, wide, as a tablet and as a phone;
// and the tree that a screen reader is given, which must hold each mark and each place.

import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page, SerializedAXNode } from 'puppeteer-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type OpenBrowser, openBrowser, openPage } from '../../../scripts/browser/browsers.ts'
import { type RunningDesk, runDesk } from '../../../scripts/browser/desk.ts'
import { ROOT } from '../../console.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'

const AXE = readFileSync(join(ROOT, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8')
const DUCK = '02-a-duck-at-the-pond.md'

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

async function openDesk(open: OpenBrowser, desk: RunningDesk, width: number, height: number): Promise<Page> {
  const { page } = await openPage(open, width, height)
  await page.goto(desk.address)
  await page.waitForSelector('.shelf :is(table, .empty)')
  await page.evaluate(AXE)
  return page
}

describeWith('chromium', 'the page for everybody', () => {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-axe-'))
  const empty = mkdtempSync(join(tmpdir(), 'battledore-axe-empty-'))
  let open: OpenBrowser
  let desk: RunningDesk
  beforeAll(async () => {
    cpSync(join(ROOT, 'fixtures', 'shelf'), folder, { recursive: true })
    open = await openBrowser('chromium')
    desk = await runDesk(folder)
  })
  afterAll(async () => {
    await open?.browser.close()
    await desk?.close()
  })

  it.each([
    [1280, 800],
    [768, 1024],
    [360, 740],
    // 200 % of the first.
    [640, 400],
  ])('no state at %i × %i has a fault', async (width, height) => {
    const page = await openDesk(open, desk, width, height)
    const hand = mouse(page)
    const faults = [...(await findFaults(page, 'shelf'))]
    const look = async (state: string, wait: string): Promise<void> => {
      await page.waitForSelector(wait)
      faults.push(...(await findFaults(page, state)), ...(await findSmall(page)))
    }
    await hand.press('A Duck at the Pond')
    await look('figures of a book', '.figures')
    await hand.press('Open')
    await page.waitForSelector('mark')
    await hand.openCard('won')
    await look('a card', '.fixes .word')
    await hand.press('Keep it here…')
    await look('a reason is asked', '.ask input')
    await hand.press('Words')
    await look('words', '.bank button')
    await hand.press('About')
    await look('about', '.about input')
    await hand.press('Look at this sequence…')
    await look('a sequence', '.steps li')
    await hand.press('Put away')
    await hand.press('Print')
    await hand.press('Make the PDF')
    await look('print', '.printed')
    await hand.press('Put away')
    await hand.press('Book')
    await look('book', '.leaf img')
    expect(faults).toEqual([])
    await page.close()
  })

  it('an empty shelf, a new story and a conflict have none either', async () => {
    const other = await runDesk(empty)
    const blank = await openDesk(open, other, 1280, 800)
    const faults = [...(await findFaults(blank, 'empty shelf'))]
    await mouse(blank).press('New story')
    await blank.waitForSelector('dialog option')
    faults.push(...(await findFaults(blank, 'a new story')))
    await blank.close()
    await other.close()
    const page = await openDesk(open, desk, 1280, 800)
    const hand = mouse(page)
    await hand.press('Open A Duck at the Pond')
    await page.waitForSelector('mark')
    await hand.toText()
    await page.keyboard.type(' Quack!')
    writeFileSync(join(folder, DUCK), '---\nstep: blue-4\n---\n\n# A Duck\n\nThe duck sat.\n')
    await page.waitForSelector('.notice')
    faults.push(...(await findFaults(page, 'conflict')))
    await hand.press('Look at both')
    await page.waitForSelector('dialog pre')
    faults.push(...(await findFaults(page, 'both texts')))
    await page.close()
    expect(faults).toEqual([])
  })

  it('a screen reader is told of each mark and of each place', async () => {
    const page = await openDesk(open, desk, 1280, 800)
    await mouse(page).press('Open The Ship in the Shed')
    await page.waitForSelector('mark')
    const marks = await page.$$eval('mark', (all) => all.map((one) => one.textContent))
    const places = await page.$$eval('.index button', (all) => all.length)
    const tree = await page.accessibility.snapshot({ interestingOnly: false })
    const nodes = tree ? flatten(tree) : []
    expect(marks.length).toBeGreaterThan(0)
    expect(nodes.filter(({ role }) => role === 'mark')).toHaveLength(marks.length)
    const named = nodes.filter(({ role, name }) => role === 'button' && /^Page \d+\. .+ \d+ of \d+\.$/.test(name ?? ''))
    expect(named).toHaveLength(places)
    for (const word of marks) expect(named.some(({ name }) => name?.includes(` ${word}. `))).toBe(true)
    await page.close()
  })
})

const flatten = (node: SerializedAXNode): readonly SerializedAXNode[] => [
  node,
  ...(node.children ?? []).flatMap((child) => flatten(child)),
]
