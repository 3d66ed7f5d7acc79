// The page of one file, opened from the disk: a story is written by mouse, by the keys alone and by a finger, saved as a download
// and printed, and nothing is asked of anybody. Read by poppler's pdftotext, which is none of ours.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { openPage } from '../../../scripts/browser/browsers.ts'
import { ROOT } from '../../console.ts'
import { describeWith } from '../../tools.ts'
import { clear, waitForFile } from './downloads.ts'
import { HANDS } from './hands.ts'
import { BROWSERS, useBrowser } from './set-up.ts'
import { FILE, lookAtBook, printStory, SENTENCES, writeStory } from './write-a-story.ts'

const file = join(mkdtempSync(join(tmpdir(), 'battledore-one-file-')), 'desk.html')
it('is written by one command', () => {
  const cli = join(ROOT, 'dist', 'cli.cjs')
  const { status, stderr } = spawnSync(process.execPath, [cli, 'desk', '--one-file', file], {
    encoding: 'utf8',
    cwd: tmpdir(),
  })
  expect([status, stderr]).toEqual([0, ''])
})

for (const name of BROWSERS)
  describeWith(name, `the page of one file in ${name}, with no server and no network`, () => {
    const open = useBrowser(name)

    it.each(HANDS)('a story by $hand.name, $width × $height', async ({ hand: toHand, width, height, hasTouch }) => {
      clear(open().downloads)
      const { page, asked, complaints } = await openPage(open(), width, height, hasTouch)
      try {
        if (name === 'chromium') await page.setOfflineMode(true)
        await page.goto(pathToFileURL(file).href)
        const hand = toHand(page)
        await hand.press('Begin with a new story')
        await writeStory(page, hand)
        await hand.press('Save')
        expect(readFileSync(await waitForFile(open().downloads, '.md'), 'utf8')).toBe(FILE)
        await page.waitForFunction(() => document.querySelector('.save-state')?.textContent?.startsWith('Saved '))
        clear(open().downloads)
        await lookAtBook(page, hand)
        await printStory(page, hand)
        const pdf = await waitForFile(open().downloads, '.pdf')
        const { stdout } = spawnSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8' })
        for (const sentence of SENTENCES) expect(stdout.replaceAll(/\s+/g, ' ')).toContain(sentence)
        expect(asked.filter((url) => url !== pathToFileURL(file).href && !/^(?:blob|data):/.test(url))).toEqual([])
        expect(complaints).toEqual([])
      } finally {
        await page.close({ runBeforeUnload: false })
      }
    })
  })
