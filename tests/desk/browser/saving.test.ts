// What stands between a text and its file, in both browsers and on a real disk: another program, a server that is gone, a second tab.

import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { beforeEach, expect, it } from 'vitest'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'
import {
  openStoryPage,
  STORY,
  takeDraft,
  waitForDraft,
  waitForNotice,
  waitForSaved,
  waitForText,
} from './saving-page.ts'
import { BROWSERS, makeShelf, useBrowser } from './set-up.ts'

const THEIRS = '---\nstep: pink-4\n---\n\n# Tam\r\n\r\nTam ran.\r\n'
for (const name of BROWSERS)
  describeWith(name, `saving in ${name}`, () => {
    const open = useBrowser(name)
    let folder: string
    beforeEach(() => {
      folder = makeShelf('saving')
    })
    const read = (): string => readFileSync(join(folder, STORY), 'utf8')

    const openStory = (address: string): Promise<Page> => openStoryPage(open(), address, 'Tam and the Hat')

    it('another program changes the story: nothing is written over, and both can be had', async () => {
      const desk = await runDesk(folder)
      const page = await openStory(desk.address)
      const hand = mouse(page)
      await hand.toText()
      await page.keyboard.type(' Zub sat.')
      writeFileSync(join(folder, STORY), THEIRS)
      await waitForNotice(page, 'Another program has changed this story')
      expect(read()).toBe(THEIRS)
      await hand.press('Take theirs')
      await waitForText(page, 'Tam ran.')
      expect(read()).toBe(THEIRS)
      await hand.press('Undo')
      await waitForText(page, 'Zub sat.')
      await page.close()
      await desk.close()
    })

    it('the server is gone: the text is still there, and there again at the next opening', async () => {
      const first = await runDesk(folder)
      const page = await openStory(first.address)
      await first.close()
      const before = read()
      await mouse(page).toText()
      await page.keyboard.type(' Zub sat.')
      await waitForNotice(page, 'Your text is still here')
      expect(read()).toBe(before)
      await waitForDraft(page, 'Zub sat.')
      await page.close({ runBeforeUnload: false })
      const second = await runDesk(folder, Number(new URL(first.origin).port))
      await takeDraft(open(), second.address, 'Tam and the Hat', 'Zub sat.')
      expect(read()).toContain('Zub sat.')
      await second.close()
    })

    it('words that are written with commas all stand in the story', async () => {
      const desk = await runDesk(folder)
      const page = await openStory(desk.address)
      const hand = mouse(page)
      await hand.press('About')
      await hand.fill('Names in this story: one more', 'Bess, Otto, Pim\n')
      await page.waitForFunction(() => document.querySelector('.about')?.textContent?.includes('Pim'))
      await waitForSaved(page)
      expect(read()).toMatch(/^names: \[.*\bBess, Otto, Pim\]$/m)
      await page.close()
      await desk.close()
    })

    it('a second tab can only look', async () => {
      const desk = await runDesk(folder)
      const page = await openStory(desk.address)
      const other = await openStory(desk.address)
      await waitForNotice(other, 'is open in another tab or window')
      await mouse(other).toText()
      await other.keyboard.type('x')
      await waitForText(other, 'Tam and Zub ran.')
      expect(await other.$eval('.cm-content', (one) => one.textContent)).not.toContain('x')
      await page.close()
      await other.close()
      await desk.close()
    })
  })
