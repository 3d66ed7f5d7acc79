// A story from an empty folder to the PDF, in both browsers, by mouse, by the keys alone, and by a finger at the size of a
// tablet: what is on the disk and in the PDF is what was typed. Read by poppler's pdftotext, which is none of ours.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { openPage, type Watched } from '../../../scripts/browser/browsers.ts'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { clear, waitForFile } from './downloads.ts'
import { HANDS } from './hands.ts'
import { BROWSERS, useBrowser } from './set-up.ts'
import { FILE, lookAtBook, printStory, SENTENCES, writeStory } from './write-a-story.ts'

for (const name of BROWSERS)
  describeWith(name, `a story written in ${name}`, () => {
    const open = useBrowser(name)

    it.each(HANDS)('by $hand.name, $width × $height', async ({ hand: toHand, width, height, hasTouch }) => {
      clear(open().downloads)
      const folder = mkdtempSync(join(tmpdir(), 'battledore-desk-'))
      const desk = await runDesk(folder)
      const watched = await openPage(open(), width, height, hasTouch)
      const { page } = watched
      try {
        await page.goto(desk.address)
        const hand = toHand(page)
        await writeStory(page, hand)
        await page.waitForFunction(() => document.querySelector('.save-state')?.textContent?.startsWith('Saved '))
        const files = readdirSync(folder)
        expect(files).toEqual([expect.stringMatching(/^sid-and-the-bun\.md$/)])
        expect(readFileSync(join(folder, files[0] ?? ''), 'utf8')).toBe(FILE)
        await lookAtBook(page, hand)
        await printStory(page, hand)
        expectPrinted(await waitForFile(open().downloads, '.pdf'))
        expectOwnAddress(watched, desk.origin)
      } finally {
        await page.close()
        await desk.close()
      }
    })
  })

/** What pdftotext reads must hold all that was typed, page for page, and `won` no more. */
function expectPrinted(path: string): void {
  const { stdout, status } = spawnSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8' })
  expect(status).toBe(0)
  const text = stdout.replaceAll(/\s+/g, ' ')
  for (const sentence of SENTENCES) expect(text).toContain(sentence)
  expect(text).not.toContain('won')
}

function expectOwnAddress({ asked, complaints }: Watched, origin: string): void {
  expect(asked.length).toBeGreaterThan(3)
  expect(asked.filter((url) => !url.startsWith(`${origin}/`) && !/^(?:blob|data):/.test(url))).toEqual([])
  // A file that is not there yet is asked for all the same; Chromium writes each 404 down.
  expect(complaints.filter((line) => !/ 404 .*\/api\//.test(line))).toEqual([])
}
