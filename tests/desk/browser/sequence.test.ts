// A sequence of one's own from nothing: written, made longer, chosen for a story, and taught from the card of a word; on a real disk.

import { cpSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { openBrowser, openPage } from '../../../scripts/browser/browsers.ts'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { ROOT } from '../../console.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'

describeWith('chromium', 'a sequence of one’s own', () => {
  it('is written, chosen and taught without a line of YAML', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'battledore-sequence-'))
    cpSync(join(ROOT, 'fixtures', 'shelf'), folder, { recursive: true })
    const read = (name: string): string => readFileSync(join(folder, name), 'utf8')
    const desk = await runDesk(folder)
    const open = await openBrowser('chromium')
    try {
      const { page, complaints } = await openPage(open, 1280, 800)
      const hand = mouse(page)
      await page.goto(desk.address)
      await hand.press('Open A Duck at the Pond')
      await page.waitForSelector('mark')
      await hand.press('About')
      await hand.press('Look at this sequence…')
      await hand.press('Write a sequence of your own')
      await hand.fill('What you call it', 'Our class')
      await hand.fill('A line a step', 'First letters: a as in cat, qq as in hat')
      await hand.press('Write it')
      await page.waitForSelector('.new-sequence .problems li')
      await hand.fill('A line a step', 'First letters: a as in cat, c as in cat\nMore: d as in dig, u as in cup, the')
      await hand.press('Write it')
      await page.waitForFunction(() => document.querySelector('#over-title')?.textContent === 'Our class')
      const field = 'Teach at step-2: a sound with a word (ai as in rain), an ending (-ed), or a word by heart'
      await hand.fill(field, 'ck as in duck\n')
      await page.waitForFunction(() => document.querySelector('.steps')?.textContent?.includes('ck as in duck'))
      expect(read('our-class.yaml')).toContain('- ck as in duck')
      await hand.press('Put away')
      await page.waitForSelector('option[value="our-class.yaml"]')
      await hand.choose('Sequence', 'our-class.yaml')
      await page.waitForSelector('option[value="step-2"]')
      await hand.choose('Step that its readers have reached', 'step-2')
      await page.waitForFunction(() => document.querySelector('.who b')?.textContent === 'step-2')
      await page.waitForSelector('mark')
      await hand.openCard('pond')
      await page.waitForSelector('.fixes')
      const offers = await page.$$eval('.fixes button', (all) => all.map((one) => one.textContent ?? ''))
      await hand.press(offers.find((offer) => offer.startsWith('Teach it')) ?? 'Teach it')
      await page.waitForFunction(() =>
        document.querySelector('.status')?.textContent?.includes('is now taught at step-2'),
      )
      expect(read('our-class.yaml')).toContain('- n as in ')
      expect(complaints.filter((line) => !/ 404 .*\/api\//.test(line))).toEqual([])
      await page.close()
    } finally {
      await open.browser.close()
      await desk.close()
    }
    expect(read('02-a-duck-at-the-pond.md')).toMatch(/^sequence: our-class\.yaml$/m)
    expect(read('02-a-duck-at-the-pond.md')).toMatch(/^step: step-2$/m)
  })
})
