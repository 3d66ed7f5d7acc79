// Every notice and every state in which something is in the way, before axe-core: at each size, light and dark.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, expect, it } from 'vitest'
import { runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { createLooker, openDesk, SIZES } from './axe.ts'
import { type Hand, mouse } from './hands.ts'
import { STORY, waitForDraft, waitForNotice, waitForSaved } from './saving-page.ts'
import { copyShelf, useBrowser } from './set-up.ts'

const OWN = `name: our-class
title: Our class
steps:
  - id: one
    title: First letters
    teach: [a as in cat, m as in mat, t as in tap]
    marks: [full stop]
    limits: { words in a sentence: 6 }
`

/** The narrow shelf has no button beside each title. */
async function openBook(hand: Hand, title: string): Promise<void> {
  await hand.press(title)
  await hand.press('Open')
}

describeWith('chromium', 'the page in trouble, for everybody', () => {
  const open = useBrowser('chromium')
  let folder: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'battledore-axe-trouble-'))
  })
  const write = (name: string, text: string | Buffer): void => writeFileSync(join(folder, name), text)

  it.each(SIZES)('no notice at %i × %i has a fault', async (width, height) => {
    const desk = await runDesk(folder)
    const page = await openDesk(open(), desk.address, width, height)
    const hand = mouse(page)
    const { faults, look } = createLooker(page)
    await look('an empty shelf', '.empty')
    copyShelf(folder)
    await page.waitForSelector('table')
    await openBook(hand, 'Tam and the Hat')
    await page.waitForSelector('.cm-content')
    await hand.toText()
    await page.keyboard.type(' Zub!')
    write(STORY, '---\nstep: pink-4\n---\n\n# Tam\n\nTam ran.\n')
    await waitForNotice(page, 'Another program has changed this story')
    await look('a conflict', '.notice')
    await hand.press('Look at both')
    await look('both texts', 'dialog pre')
    await hand.press('Put away')
    await waitForDraft(page, 'Zub!')
    await page.close({ runBeforeUnload: false })
    const again = await openDesk(open(), desk.address, width, height)
    const other = mouse(again)
    const second = createLooker(again)
    await openBook(other, 'Tam')
    await waitForNotice(again, 'that were not saved')
    await second.look('a draft', '.notice')
    await other.press('Throw them away')
    rmSync(join(folder, STORY))
    await waitForNotice(again, 'is gone')
    await second.look('a story that is gone', '.notice')
    await other.press('About')
    await other.fill('Place on the shelf', 'soon\n')
    await waitForNotice(again, 'is a number')
    await second.look('a setting that cannot be', '.notice')
    await other.press('Put this away')
    await other.press('Save mine as a copy')
    await waitForSaved(again)
    await desk.close()
    await other.toText()
    await again.keyboard.type(' Bun.')
    await waitForNotice(again, 'Your text is still here')
    await second.look('no server', '.notice')
    await again.close({ runBeforeUnload: false })
    expect([...faults, ...second.faults]).toEqual([])
  })

  it.each(SIZES)('no odd file at %i × %i leads to a fault', async (width, height) => {
    write('old.md', Buffer.from('---\nstep: pink-4\n---\n\n# The Caf\xe9\n\nTam sat.\n', 'latin1'))
    write('no-step.md', '# A Cat\n\nA cat sat.\n')
    write('our-class.yaml', OWN)
    write('own.md', '---\nstep: one\nsequence: our-class.yaml\n---\n\n# A Mat\n\nTam sat.\n')
    const desk = await runDesk(folder)
    const page = await openDesk(open(), desk.address, width, height)
    const hand = mouse(page)
    const { faults, look } = createLooker(page)
    await look('files that are no stories', '.shelf .problems')
    await hand.press('Open old.md')
    await waitForNotice(page, 'is not UTF-8')
    await look('a story for reading only', '.notice')
    await hand.press('Shelf')
    await openBook(hand, 'A Cat')
    await look('no step', '#panel-body h3')
    await hand.press('Shelf')
    await openBook(hand, 'A Mat')
    await hand.openCard('sat')
    await look('a card that teaches', '.fixes')
    await hand.press('Keep it here…')
    await page.keyboard.type('a name\n')
    await look('a word that is kept', '.kept')
    await waitForSaved(page)
    await hand.press('About')
    await hand.press('Look at this sequence…')
    await look('a sequence of one’s own', '.steps form')
    await hand.fill('What you call it', 'Next')
    await hand.fill('What is taught', 'zzz as in cat')
    await hand.press('Add the step')
    await look('a step that cannot be', '.add-step .wrong')
    await page.close()
    await desk.close()
    expect(faults).toEqual([])
  })
})
