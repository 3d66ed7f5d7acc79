// Every state of the page before axe-core (WCAG 2.2 A and AA, best practice), light and dark, wide, as a tablet and as a phone;
// and the tree that a screen reader is given, which must hold each mark and each place.

import type { SerializedAXNode } from 'puppeteer-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type OpenBrowser, openBrowser } from '../../../scripts/browser/browsers.ts'
import { type RunningDesk, runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { createLooker, openDesk, SIZES } from './axe.ts'
import { mouse } from './hands.ts'
import { makeShelf } from './set-up.ts'

describeWith('chromium', 'the page for everybody', () => {
  const folder = makeShelf('axe')
  let open: OpenBrowser
  let desk: RunningDesk
  beforeAll(async () => {
    open = await openBrowser('chromium')
    desk = await runDesk(folder)
  })
  afterAll(async () => {
    await open?.browser.close()
    await desk?.close()
  })

  it.each(SIZES)('no state at %i × %i has a fault', async (width, height) => {
    const page = await openDesk(open, desk.address, width, height)
    const hand = mouse(page)
    const { faults, look } = createLooker(page)
    await look('shelf', 'table')
    await hand.press('A Duck at the Pond')
    await look('figures of a book', '.figures')
    await hand.press('New story')
    await look('a new story', 'dialog option')
    await hand.press('Put away')
    await hand.press('Open')
    await hand.openCard('won')
    await look('a card', '.fixes .word')
    await hand.press('Keep it here…')
    await look('a reason is asked', '.ask input')
    await hand.press('Keep it')
    await look('no reason was given', '.ask .wrong')
    await hand.press('Words')
    await look('words', '.bank button')
    await hand.press('More wishes')
    await hand.fill('Rhymes with', 'zzz')
    await look('no word fits', '.bank:empty')
    await hand.press('About')
    await look('about', '.about input')
    await hand.press('Show the file as it is')
    await look('the file as it is', '.sheet')
    await hand.press('Show the file as it is')
    await hand.press('Look at this sequence…')
    await look('a sequence', '.steps li')
    await hand.press('Write a sequence of your own')
    await hand.fill('What you call it', 'Our class')
    await hand.fill('A line a step', 'zzz as in cat')
    await hand.press('Write it')
    await look('a sequence with a mistake', '.new-sequence .problems li')
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

  it('a screen reader is told of each mark and of each place', async () => {
    const page = await openDesk(open, desk.address, 1280, 800)
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
