// Three ways to use a page: the mouse, the keys alone, a finger. A story is written with each of them in the same words.

import type { ElementHandle, KeyInput, Page } from 'puppeteer-core'

export interface Hand {
  readonly name: string
  /** Presses what has this name: a button, a tab, a title in a table. */
  press(name: string): Promise<void>
  /** Goes to the field of this name, in whose place it writes. */
  fill(name: string, text: string): Promise<void>
  choose(name: string, value: string): Promise<void>
  /** Goes into the text of the story, to its end. */
  toText(): Promise<void>
  /** A new page below. */
  newPage(): Promise<void>
  /** Opens the card of a marked word. */
  openCard(word: string): Promise<void>
}

/** Typed into whatever has the keys. */
export async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text)
}

async function chord(page: Page, ...keys: readonly KeyInput[]): Promise<void> {
  const last = keys.at(-1)
  const held = keys.slice(0, -1)
  for (const key of held) await page.keyboard.down(key)
  if (last) await page.keyboard.press(last)
  for (const key of held.toReversed()) await page.keyboard.up(key)
}

/** Runs in the page: what can be pressed or filled under a name, as a screen reader names it. */
function findNamed(name: string): Element | null {
  const inner = document.querySelector('dialog[open]') ?? document
  const all = inner.querySelectorAll('button, input, select, textarea, summary, a[href]')
  return (
    [...all].find((one) => {
      const box = one.getBoundingClientRect()
      if (box.width === 0 || (one as HTMLButtonElement).disabled) return false
      const label = (one as HTMLInputElement).labels?.[0]
      const own = label?.querySelector('span') ?? label ?? one
      return (one.getAttribute('aria-label') ?? own.textContent ?? '').trim() === name
    }) ?? null
  )
}

async function named(page: Page, name: string): Promise<ElementHandle> {
  const found = await page
    .waitForFunction(findNamed, { polling: 'mutation', timeout: 20_000 }, name)
    .catch(async () => {
      const shown = await page.evaluate(() => document.body.textContent)
      throw new Error(`nothing on the page is called “${name}”; it shows:\n${shown}`)
    })
  return found as ElementHandle
}

type Tap = (target: ElementHandle) => Promise<void>

/** By mouse or finger: everything is pressed where it stands. */
function pointing(page: Page, name: string, tap: Tap): Hand {
  const press = async (label: string): Promise<void> => {
    // What is drawn anew in just that moment is looked for again, as a hand would.
    for (let tries = 1; ; tries++) {
      const target = await named(page, label)
      await target.evaluate((one) => one.scrollIntoView({ block: 'nearest' }))
      try {
        return await tap(target)
      } catch (error) {
        const isGone = !(await target.evaluate((one) => one.isConnected))
        if (!isGone || tries === 5) throw error
      }
    }
  }
  return {
    name,
    press,
    async fill(label, text) {
      const target = await named(page, label)
      await tap(target)
      await target.evaluate((one) => (one as HTMLInputElement).select())
      await type(page, text)
    },
    // The list of a select is drawn by the system, so no test can press in it.
    async choose(label, value) {
      const target = await named(page, label)
      await (target as ElementHandle<HTMLSelectElement>).select(value)
    },
    async toText() {
      const lines = await page.$$('.cm-content .cm-line:not(.line-gap)')
      const last = lines.at(-1)
      if (last) await tap(last)
      await chord(page, 'Control', 'End')
    },
    newPage: () => press('New page below'),
    async openCard(word) {
      const found = await page
        .waitForFunction(
          (wanted) => [...document.querySelectorAll('.cm-content mark')].find((one) => one.textContent === wanted),
          { polling: 'mutation', timeout: 20_000 },
          word,
        )
        .catch(() => {
          throw new Error(`“${word}” is not marked`)
        })
      const mark = found as ElementHandle
      await mark.evaluate((one) => one.scrollIntoView({ block: 'center' }))
      await tap(mark)
    },
  }
}

export const mouse = (page: Page): Hand => pointing(page, 'the mouse', (target) => target.click())

const finger = (page: Page): Hand => pointing(page, 'a finger', (target) => target.tap())

/** Runs in the page. Never round the end: there the browser's own bar would have the keys. */
function toWay(target: Element): 'there' | 'back' | 'on' {
  const at = document.activeElement
  if (at === target) return 'there'
  const isBehind =
    at !== null && at !== document.body && at.compareDocumentPosition(target) & Node.DOCUMENT_POSITION_PRECEDING
  return isBehind ? 'back' : 'on'
}

/** By keys alone: Tab until it is there, then Enter; the arrow keys between tabs. */
function keys(page: Page): Hand {
  const reach = async (name: string): Promise<void> => {
    const target = await named(page, name)
    for (let presses = 0; presses < 120; presses++) {
      const way = await target.evaluate(toWay)
      if (way === 'there') return
      if (way === 'back') await chord(page, 'Shift', 'Tab')
      else await page.keyboard.press('Tab')
    }
    throw new Error(`Tab does not reach “${name}”`)
  }
  return {
    name: 'the keys alone',
    async press(name) {
      const target = await named(page, name)
      const isTab = await target.evaluate((one) => one.getAttribute('role') === 'tab')
      if (isTab) return turnTo(page, name)
      await reach(name)
      await page.keyboard.press('Enter')
    },
    async fill(name, text) {
      await reach(name)
      await chord(page, 'Control', 'a')
      await type(page, text)
    },
    // A select hears the first letters of what is wished for, as every system has it.
    async choose(name, value) {
      await reach(name)
      await type(page, value)
    },
    async toText() {
      await page.keyboard.press('Escape')
      await chord(page, 'Control', 'End')
    },
    newPage: () => chord(page, 'Control', 'Enter'),
    async openCard(word) {
      for (let presses = 0; presses < 40; presses++) {
        await page.keyboard.press('F8')
        await page.waitForFunction(() => document.activeElement?.closest('.card') !== null, {
          polling: 'mutation',
          timeout: 4000,
        })
        if ((await page.evaluate(() => document.activeElement?.textContent)) === word) return
      }
      throw new Error(`F8 does not reach “${word}”`)
    },
  }
}

const isAt = (page: Page, name: string): Promise<boolean> =>
  page.evaluate((wanted) => {
    const one = document.activeElement
    const label = (one as HTMLInputElement | null)?.labels?.[0]
    const own = label?.querySelector('span') ?? label ?? one
    return (one?.getAttribute('aria-label') ?? own?.textContent ?? '').trim() === wanted
  }, name)

/** To the panel by F6, then from tab to tab. */
async function turnTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 3; presses++) {
    if (await page.evaluate(() => document.activeElement?.getAttribute('role') === 'tab')) break
    await page.keyboard.press('F6')
  }
  for (let presses = 0; presses < 3 && !(await isAt(page, name)); presses++) {
    const before = await page.evaluate(() => document.activeElement?.id)
    await page.keyboard.press('ArrowRight')
    await page.waitForFunction((id) => document.activeElement?.id !== id, { polling: 'raf', timeout: 2000 }, before)
  }
}

/** Each with the window in which it writes a story. */
export const HANDS = [
  { hand: mouse, width: 1280, height: 800, hasTouch: false },
  { hand: keys, width: 1280, height: 800, hasTouch: false },
  { hand: finger, width: 768, height: 1024, hasTouch: true },
] as const
