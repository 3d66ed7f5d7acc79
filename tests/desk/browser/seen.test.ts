// What must be seen whatever the system asks for: marks in forced colours and without any colour, nothing that moves where motion is
// reduced, and a mark in the book no wider than its word.

import type { Page } from 'puppeteer-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type OpenBrowser, openBrowser } from '../../../scripts/browser/browsers.ts'
import { type RunningDesk, runDesk } from '../../../scripts/browser/desk.ts'
import { describeWith } from '../../tools.ts'
import { mouse } from './hands.ts'
import { openStoryPage } from './saving-page.ts'
import { makeShelf } from './set-up.ts'

/** How the marked word and its letters are drawn, colours aside. */
const findMark = (page: Page) =>
  page.evaluate(() => {
    const mark = [...document.querySelectorAll('.cm-content mark')].find((one) => one.querySelector('.blamed'))
    const blamed = mark?.querySelector('.blamed')
    if (!mark || !blamed) return undefined
    const [word, letters] = [getComputedStyle(mark), getComputedStyle(blamed)]
    return {
      word: word.textDecorationStyle,
      line: word.textDecorationLine,
      bar: [letters.borderBottomStyle, Number.parseFloat(letters.borderBottomWidth)],
      barColour: letters.borderBottomColor,
      ground: getComputedStyle(mark.closest('.cm-editor') ?? mark).backgroundColor,
    }
  })

const DRAWN = { word: 'dotted', line: 'underline', bar: ['solid', expect.any(Number)] }

describeWith('chromium', 'the page as the system asks for it', () => {
  const folder = makeShelf('seen')
  let open: OpenBrowser
  let desk: RunningDesk
  let page: Page
  beforeAll(async () => {
    open = await openBrowser('chromium')
    desk = await runDesk(folder)
    page = await openStoryPage(open, desk.address, 'A Duck at the Pond')
    await page.waitForSelector('mark .blamed')
  })
  afterAll(async () => {
    await open?.browser.close()
    await desk?.close()
  })

  it.each(['none', 'active'] as const)('marks are a bar and a dotted line, forced colours: %s', async (value) => {
    const session = await page.createCDPSession()
    await session.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value }] })
    expect(await page.evaluate(() => matchMedia('(forced-colors: active)').matches)).toBe(value === 'active')
    const mark = await findMark(page)
    expect(mark).toMatchObject(DRAWN)
    expect(mark?.bar[1]).toBeGreaterThan(2)
    expect(mark?.barColour).not.toBe(mark?.ground)
    await session.send('Emulation.setEmulatedMedia', { features: [] })
  })

  it('in forced colours the place that is looked at, tabs that are chosen and strong buttons have an edge of their own', async () => {
    const session = await page.createCDPSession()
    await session.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value: 'active' }] })
    await mouse(page).openCard('won')
    await page.waitForSelector('.place-open')
    const edges = await page.evaluate(() => {
      const style = (selector: string) => getComputedStyle(document.querySelector(selector) ?? document.body)
      const [chosen, other] = ['true', 'false'].map((is) => style(`[role=tab][aria-selected=${is}]`).borderBottomColor)
      const open = style('.place-open')
      return { chosen, other, open: [open.outlineStyle, open.borderTopStyle] }
    })
    expect(edges.chosen).not.toBe(edges.other)
    expect(edges.open).toContain('solid')
    await session.send('Emulation.setEmulatedMedia', { features: [] })
  })

  it('nothing moves where motion is reduced, the cursor among it', async () => {
    await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }])
    await mouse(page).toText()
    await mouse(page).press('Print')
    await page.waitForSelector('dialog[open]')
    await mouse(page).press('Put away')
    const moving = await page.evaluate(() => [
      ...document.getAnimations().map((one) => (one as CSSAnimation).animationName ?? 'a transition'),
      ...[...document.querySelectorAll('*')].flatMap((one) => {
        const { animationName, animationDuration, transitionDuration, scrollBehavior } = getComputedStyle(one)
        const isStill = [animationDuration, transitionDuration].every((time) => /^(?:0s|auto)(?:, 0s)*$/.test(time))
        return (isStill || animationName === 'none') &&
          /^0s(?:, 0s)*$/.test(transitionDuration) &&
          scrollBehavior === 'auto'
          ? []
          : [`${one.className}: ${animationName} ${animationDuration} ${transitionDuration}`]
      }),
    ])
    expect(moving).toEqual([])
    await page.emulateMediaFeatures([])
  })

  it('a mark in the book is as wide as its word', async () => {
    await mouse(page).press('Book')
    await page.waitForSelector('.leaf img')
    let marks = 0
    for (let spread = 0; spread < 4; spread++) {
      const widths = await page.$$eval('.leaf .mark', (all) =>
        all.map((one) => {
          const wanted = Number.parseFloat((one as HTMLElement).style.width) / 100
          const leaf = one.parentElement?.getBoundingClientRect().width ?? 0
          return { wanted: wanted * leaf, drawn: one.getBoundingClientRect().width }
        }),
      )
      for (const { wanted, drawn } of widths) expect(Math.abs(drawn - wanted)).toBeLessThan(1.5)
      marks += widths.length
      const isLast = await page.$eval('.book .stepper button:last-child', (one) => (one as HTMLButtonElement).disabled)
      if (isLast) break
      const name = await page.$eval('.book .stepper span', (one) => one.textContent)
      await mouse(page).press('Next')
      await page.waitForFunction((old) => document.querySelector('.book .stepper span')?.textContent !== old, {}, name)
    }
    expect(marks).toBeGreaterThan(2)
  })
})
