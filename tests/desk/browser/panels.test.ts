// What somebody has begun in a panel stays, and what cannot be done is never told as done: in a real browser, on real files.

import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, expect, it } from 'vitest'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'
import { openStoryPage, STORY, waitForNotice, waitForSaved, waitForText } from './saving-page.ts'
import { makeShelf, useBrowser } from './set-up.ts'

describeWith('chromium', 'panels of the desk', () => {
  const open = useBrowser('chromium')
  let folder: string
  beforeEach(() => {
    folder = makeShelf('panels')
  })

  it('a reason that is half typed stays when the text is checked anew', async () => {
    const desk = await runDesk(folder)
    const page = await openStoryPage(open(), desk.address, 'A Duck at the Pond')
    const hand = mouse(page)
    await hand.openCard('won')
    await hand.press('Keep it here…')
    await page.waitForSelector('.ask input')
    await page.keyboard.type('a word of')
    const settings = join(folder, 'battledore.yaml')
    const before = readFileSync(settings, 'utf8')
    // Another program changes the settings, and changes them back: the story is checked anew, and so is the open card.
    for (const text of [`${before}sight words: [laugh]\n`, before]) {
      const count = await page.$eval('#tab-places', (one) => one.textContent)
      writeFileSync(settings, text)
      await page.waitForFunction((old) => document.querySelector('#tab-places')?.textContent !== old, {}, count)
    }
    await page.keyboard.type(' the song')
    expect(await page.$eval('.ask input', (one) => (one as HTMLInputElement).value)).toBe('a word of the song')
    await page.keyboard.press('Enter')
    await waitForSaved(page)
    await expect
      .poll(() => readFileSync(join(folder, '02-a-duck-at-the-pond.md'), 'utf8'), { timeout: 10_000 })
      .toContain('"won" -- a word of the song')
    await page.close()
    await desk.close()
  })

  it('theirs that cannot be taken is told, and mine stays on the screen', async () => {
    const desk = await runDesk(folder)
    const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
    const hand = mouse(page)
    await hand.toText()
    await page.keyboard.type(' Zub sat.')
    // No text at all: there is nothing to take.
    writeFileSync(join(folder, STORY), new Uint8Array([0, 1, 2, 0]))
    await waitForNotice(page, 'Another program has changed this story')
    await hand.press('Take theirs')
    await waitForNotice(page, 'is not a text')
    await waitForText(page, 'Zub sat.')
    expect(await page.$eval('.status', (one) => one.textContent)).not.toContain('as it is on the disk')
    await page.close({ runBeforeUnload: false })
    await desk.close()
  })

  it('a copy is of what stands on the screen, and of every letter of an old file', async () => {
    const old = Buffer.from('---\nstep: pink-4\n---\n\n# The Caf\xe9\n\nTam sat in the caf\xe9.\n', 'latin1')
    writeFileSync(join(folder, 'no-step.md'), '# A Cat\n\nA cat sat.\n')
    writeFileSync(join(folder, 'old.md'), old)
    const desk = await runDesk(folder)
    const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
    const hand = mouse(page)
    await hand.toText()
    await page.keyboard.type(' Zub sat.')
    await hand.press('Shelf')
    await hand.press('Tam and the Hat')
    await hand.press('Copy')
    await page.waitForSelector('dialog option')
    await hand.press('Make the copy')
    await page.waitForFunction(() => document.querySelector('h1')?.textContent === 'Tam and the Hat, again')
    await expect
      .poll(() => readFileSync(join(folder, 'tam-and-the-hat-again.md'), 'utf8'), { timeout: 10_000 })
      .toContain('Zub sat.')
    await page.close()
    await desk.close()
  })

  it('what is left out of every check stands on no shelf', async () => {
    writeFileSync(join(folder, '.battledoreignore'), '02-*\n')
    const desk = await runDesk(folder)
    const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
    await mouse(page).press('Shelf')
    await page.waitForSelector('tbody tr')
    const titles = await page.$$eval('tbody th', (all) => all.map((one) => one.textContent))
    expect(titles).toEqual(['Tam and the Hat', 'The Ship in the Shed', 'Rain on Tansy Lane'])
    await page.close()
    await desk.close()
  })

  it('words for the wall and a set for a lesson are printed from here', async () => {
    const desk = await runDesk(folder)
    const page = await openStoryPage(open(), desk.address, 'Tam and the Hat')
    const hand = mouse(page)
    await hand.press('Print')
    for (const [kind, told] of [
      ['word wall', '12 words'],
      ['lesson set', 'strips'],
    ] as const) {
      await hand.choose('What', kind)
      await hand.press('Make the PDF')
      await page.waitForSelector('.printed')
      expect(await page.$eval('.printed', (one) => one.textContent)).toContain(told)
    }
    await page.close()
    await desk.close()
  })
})
