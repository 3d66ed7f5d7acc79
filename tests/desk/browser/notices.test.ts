// What the page says, and what it keeps, where a file cannot be written: in both browsers, on real files and real disks.

import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../../scripts/browser/browsers.ts'
import { type RunningDesk, runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { clear, waitForFile } from './downloads.ts'
import { mouse } from './hands.ts'
import {
  openStoryPage,
  STORY,
  takeDraft,
  waitForDraft,
  waitForNotice,
  waitForSaved,
  waitForStatus,
  waitForText,
} from './saving-page.ts'
import { BROWSERS, copyShelf, useBrowser } from './set-up.ts'
import { openSmallDisk, type SmallDisk } from './small-disk.ts'

const probe = openSmallDisk()
probe?.remove()
const WHY_NOT = 'LEFT OUT: a small disk can be mounted only with the rights of root'
if (probe === undefined) process.stderr.write(`a disk that is full or read only: ${WHY_NOT}\n`)

/** A story from an old program: windows-1252, as the ends of its lines. */
const OLD = Buffer.from(
  '---\r\nstep: pink-4\r\n---\r\n\r\n# Tam at the Caf\xe9\r\n\r\nTam sat in the caf\xe9.\r\n',
  'latin1',
)

const notice = (page: Page) => page.$eval('.notice p', (one) => one.textContent)

for (const name of BROWSERS)
  describeWith(name, `what the page says in ${name}`, () => {
    const open = useBrowser(name)
    let desk: RunningDesk
    beforeEach(() => clear(open().downloads))
    afterEach(async () => {
      await desk?.close()
    })

    it('of a file that is not UTF-8: it can be read, stays as it is, and a copy of it keeps every letter', async () => {
      const folder = mkdtempSync(join(tmpdir(), 'battledore-old-'))
      writeFileSync(join(folder, 'old.md'), OLD)
      desk = await runDesk(folder)
      const { page, hand } = await openUnlisted(open(), desk.address, 'old.md')
      await waitForNotice(page, 'is not UTF-8')
      expect(await notice(page)).toContain('Save a copy to go on writing')
      await waitForText(page, 'Tam sat in the café.')
      await hand.toText()
      await page.keyboard.type('Zub')
      await hand.press('Save mine as a copy')
      await waitForStatus(page, 'Saved as old (my copy).md.')
      expect(readFileSync(join(folder, 'old.md'))).toEqual(OLD)
      expect(readFileSync(join(folder, 'old (my copy).md'), 'utf8')).toBe(OLD.toString('latin1'))
      await page.close()
    })

    describe.runIf(probe)(probe ? 'on a small disk' : WHY_NOT, () => {
      let disk: SmallDisk
      beforeEach(() => {
        disk = openSmallDisk() as SmallDisk
        copyShelf(disk.folder)
      })
      afterEach(() => {
        disk?.remove()
      })
      const read = (): string => readFileSync(join(disk.folder, STORY), 'utf8')

      it('of a full disk: the text stays, the file too, the draft survives, and it is saved when there is room', async () => {
        desk = await runDesk(disk.folder)
        const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
        const before = read()
        disk.fill()
        await mouse(page).toText()
        await page.keyboard.type(' Zub sat.')
        await waitForNotice(page, 'the disk is full')
        expect(await notice(page)).toMatch(/^Not saved: .+the disk is full\. A draft is kept in this browser\.$/)
        await waitForText(page, 'Zub sat.')
        expect(read()).toBe(before)
        expect(readdirSync(disk.folder).filter((one) => one.endsWith('.tmp'))).toEqual([])
        await mouse(page).press('Save mine as a copy')
        await waitForNotice(page, 'the disk is full')
        expect(readdirSync(disk.folder).filter((one) => one.includes('copy'))).toEqual([])
        await mouse(page).press('Download it')
        expect(readFileSync(await waitForFile(open().downloads, '.md'), 'utf8')).toContain('Zub sat.')
        await waitForDraft(page, 'Zub sat.')
        await page.close({ runBeforeUnload: false })
        disk.free()
        await takeDraft(open(), desk.address, 'Tam and the Hat', 'Zub sat.')
        expect(read()).toContain('Zub sat.')
      })

      it('of a folder that becomes read-only while somebody writes: nothing is lost, and it is saved when it may be', async () => {
        desk = await runDesk(disk.folder)
        const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
        const before = read()
        disk.lock()
        await mouse(page).toText()
        await page.keyboard.type(' Zub sat.')
        await waitForNotice(page, 'the disk can only be read')
        await waitForText(page, 'Zub sat.')
        await waitForDraft(page, 'Zub sat.')
        expect(read()).toBe(before)
        disk.unlock()
        await mouse(page).press('Try again')
        await waitForSaved(page)
        await page.waitForFunction(() => document.querySelector('.notice') === null)
        expect(read()).toContain('Zub sat.')
        await page.close()
      })

      it('of a folder that is read-only from the beginning: it can be read, and written in once that is taken off', async () => {
        disk.lock()
        desk = await runDesk(disk.folder)
        const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
        const hand = mouse(page)
        await waitForNotice(page, 'You can read it here')
        await hand.toText()
        await page.keyboard.type(' Zub sat.')
        expect(await page.$eval('.cm-content', (one) => one.textContent)).not.toContain('Zub sat.')
        disk.unlock()
        await hand.press('Try again')
        await page.waitForFunction(() => document.querySelector('.notice') === null)
        await hand.toText()
        await page.keyboard.type(' Zub sat.')
        await waitForSaved(page)
        expect(read()).toContain('Zub sat.')
        await page.close()
      })
    })
  })

/** A file that the shelf lists among those that are no stories: it is opened from there. */
async function openUnlisted(open: OpenBrowser, address: string, path: string) {
  const page = await openStoryPage(open, address, path)
  return { page, hand: mouse(page) }
}
