// Undo is one chain: over typing, pages, notes, words put in from a card and from the bank, what is kept, and settings, back to the
// first byte of the file, and forth again to the last. On real files, in both browsers.

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { expect, it } from 'vitest'
import { openBrowser } from '../../../scripts/browser/browsers.ts'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'
import { openStoryPage, waitForText } from './saving-page.ts'
import { BROWSERS } from './set-up.ts'

/** A byte order mark, and lines that end in two ways: what nobody touches must come back as it is. */
const BEGUN =
  '\uFEFF---\r\nstep: pink-4\r\n---\r\n\r\n# Tam and the Bun\r\n\r\nTam won a bun.\n\nHe won it.\r\n\r\n---\r\n\r\nNight!\r\n'

/** Presses until there is no more to go back to, or forth. @returns how often */
const pressToTheEnd = (page: Page, name: 'Undo' | 'Redo'): Promise<number> =>
  page.evaluate(async (wanted) => {
    const find = () => [...document.querySelectorAll('button')].find((one) => one.textContent === wanted)
    let presses = 0
    for (let button = find(); button && !button.disabled; button = find()) {
      button.click()
      presses++
      await new Promise((done) => setTimeout(done))
    }
    return presses
  }, name)

for (const name of BROWSERS)
  describeWith(name, `undo in ${name}`, () => {
    it('goes back over pages, words that were put in and settings, to the first byte, and forth again', {
      timeout: 120_000,
    }, async () => {
      const folder = mkdtempSync(join(tmpdir(), 'battledore-undo-'))
      const path = join(folder, 'tam.md')
      writeFileSync(path, BEGUN)
      const desk = await runDesk(folder)
      const open = await openBrowser(name)
      const read = (): string => readFileSync(path, 'utf8')
      const seen: string[] = []
      /** Each step is in the file before the next one is made, so that none can hide behind another. */
      const waitForFile = async (page: Page, wanted: RegExp): Promise<void> => {
        await page.keyboard.down('Control')
        await page.keyboard.press('s')
        await page.keyboard.up('Control')
        await expect.poll(read, { timeout: 10_000 }).toMatch(wanted)
        seen.push(read())
      }
      try {
        const page = await openStoryPage(open, desk.address, 'Tam and the Bun')
        const hand = mouse(page)
        await hand.toText()
        await page.keyboard.type(' Zub sat.')
        await hand.newPage()
        await page.keyboard.type('For Meg.')
        await hand.press('For the grown-up')
        await waitForFile(page, /Night! Zub sat\.[\r\n]+---[\r\n]+> For Meg\./)
        await hand.openCard('won')
        await hand.press('everywhere, 2 times')
        await hand.press('got')
        await waitForFile(page, /Tam got a bun\.\n\nHe got it\./)
        await hand.openCard('He')
        await hand.press('Known by heart')
        await waitForFile(page, /^sight words: \[?he/im)
        await hand.openCard('Night')
        await hand.press('Keep it here…')
        await page.keyboard.type('what Tam says\n')
        await waitForFile(page, /battledore ignore .*what Tam says/)
        await hand.press('About')
        await hand.fill('Title', 'Tam and the Big Bun\n')
        await waitForFile(page, /^# Tam and the Big Bun/m)
        await hand.choose('Step that its readers have reached', 'blue-2')
        await waitForFile(page, /^step: blue-2/m)
        await hand.fill('Names in this story: one more', 'Tam, Bess\n')
        await waitForFile(page, /^names: \[Tam, Bess\]/m)
        await hand.press('Take Tam away')
        await waitForFile(page, /^names: \[Bess\]/m)
        await hand.press('Words')
        await hand.toText()
        await page.waitForSelector('.bank button')
        const put = await page.$eval('.bank button', (one) => one.firstChild?.textContent)
        await page.click('.bank button')
        await waitForFile(page, new RegExp(`For Meg\\. ${put}`))
        await hand.press('About')
        await hand.press('As it was when I opened it')
        await waitForText(page, 'Tam won a bun.')
        await expect.poll(read, { timeout: 10_000 }).toBe(BEGUN)
        await hand.press('Undo')
        await waitForText(page, 'Tam got a bun.')
        const last = seen.at(-1)
        await expect.poll(read, { timeout: 10_000 }).toBe(last)
        expect(new Set(seen).size).toBe(seen.length)
        expect(await pressToTheEnd(page, 'Undo')).toBeGreaterThanOrEqual(seen.length)
        await expect.poll(read, { timeout: 10_000 }).toBe(BEGUN)
        await pressToTheEnd(page, 'Redo')
        await hand.press('Undo')
        await expect.poll(read, { timeout: 10_000 }).toBe(last)
        await page.close()
      } finally {
        await open.browser.close()
        await desk.close()
      }
    })
  })
