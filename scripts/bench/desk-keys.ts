// What a key costs on the page: from the key to the frame that shows it, and from the last key to its mark.

import type { Page } from 'puppeteer-core'
import { runDesk } from '../browser/desk.ts'
import { type Row, toMedian } from './measure.ts'

/** Milliseconds: two frames of a screen of 60 Hz, and what is still felt as at once. */
const FRAME = 33
const SLOW_FRAME = 100
/** The pause of the page before it checks, and what the marks may take after it. */
const MARKS = 80 + 150

const KEYS = 'The hen sat on a bed and the red hen got up and ran to the shed.'

interface Keys {
  /** From each key to the end of its frame, in milliseconds. */
  readonly frames: readonly number[]
}

export async function benchKeys(folder: string, openPage: () => Promise<Page>): Promise<Row[]> {
  const rows: Row[] = []
  const desk = await runDesk(folder)
  try {
    for (const name of ['Five', 'Fifty'])
      for (const slowed of [1, 4]) {
        const page = await openPage()
        try {
          const plain = await benchPlain(page, slowed)
          await page.setViewport({ width: 1280, height: 900 })
          await page.goto(desk.address)
          await (await page.waitForSelector(`[aria-label="Open ${name}"]`))?.click()
          await page.waitForSelector('.cm-content mark')
          rows.push(...(await benchOne(page, name === 'Five' ? 5 : 50, slowed, plain)))
        } finally {
          await page.close()
        }
      }
  } finally {
    await desk.close()
  }
  return rows
}

/** The same keys in a text box with nothing around it: what this machine takes now for any key. */
async function benchPlain(page: Page, slowed: number): Promise<number> {
  await page.setContent('<textarea rows="20" cols="60"></textarea>')
  await page.focus('textarea')
  const frames = await typeKeys(page, slowed)
  return toMedian(frames)
}

async function typeKeys(page: Page, slowed: number): Promise<readonly number[]> {
  const session = await page.createCDPSession()
  // Functions that are sent into the page may have been compiled with it.
  await page.evaluate('window.__name = (one) => one')
  await page.evaluate(listenToKeys)
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed })
  for (const key of KEYS) {
    await page.keyboard.press(key === ' ' ? 'Space' : (key as 'a'))
    await pause(90)
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  await session.detach()
  const { frames } = await page.evaluate(() => (window as unknown as { keys: Keys }).keys)
  return frames.slice(8)
}

async function benchOne(page: Page, size: number, slowed: number, plain: number): Promise<Row[]> {
  // Into the middle of a paragraph in sight, as a person goes on writing.
  const line = (await page.$$('.cm-content .cm-line')).at(8)
  await line?.click()
  await page.keyboard.press('End')
  const warm = await typeKeys(page, slowed)
  const median = toMedian(warm)
  const late = [...warm].sort((one, other) => one - other)[Math.floor(warm.length * 0.95)] ?? 0
  const limit = slowed === 1 ? FRAME : SLOW_FRAME
  const about = `${size} KB${slowed === 1 ? '' : `, the processor slowed ${slowed} ×`}`
  const keyRow: Row = {
    what: `from a key to its frame, ${about}`,
    figure: `${median.toFixed(0)} ms, ${(median / plain).toFixed(1)} × a plain text box (95 %: ${late.toFixed(0)} ms; ${warm.length} keys)`,
    wanted: `≤ ${limit} ms`,
    holds: warm.length > 30 && median <= limit,
  }
  if (slowed > 1) return [keyRow]
  const marks = await benchMarks(page)
  return [
    keyRow,
    {
      what: `from the last key to its mark, ${about}`,
      figure: `${marks.toFixed(0)} ms`,
      wanted: `≤ ${MARKS} ms, the pause of 80 ms among them`,
      holds: marks <= MARKS,
    },
  ]
}

/** A word that the step cannot read; what is still being typed has no mark, so a space ends it. */
async function benchMarks(page: Page): Promise<number> {
  const times: number[] = []
  for (let run = 0; run < 7; run++) {
    await pause(900)
    await page.evaluate(watchMarks)
    await page.keyboard.type(' night', { delay: 30 })
    await page.keyboard.press('Space')
    times.push(await page.evaluate(() => (window as unknown as { marked: Promise<number> }).marked))
  }
  return toMedian(times)
}

const pause = (time: number): Promise<void> => new Promise((done) => setTimeout(done, time))

/** Runs in the page: from the time of a key's event to the end of the frame behind it. */
function listenToKeys(): void {
  const frames: number[] = []
  const channel = new MessageChannel()
  let pressed: number | undefined
  channel.port1.onmessage = () => {
    if (pressed !== undefined) frames.push(performance.now() - pressed)
    pressed = undefined
  }
  addEventListener(
    'keydown',
    (event) => {
      pressed ??= event.timeStamp
      requestAnimationFrame(() => channel.port2.postMessage(null))
    },
    { capture: true },
  )
  Object.assign(window, { keys: { frames } })
}

/** Runs in the page: from the space to the frame with a mark more. */
function watchMarks(): void {
  const count = (): number => document.querySelectorAll('.cm-content mark').length
  const marked = new Promise<number>((done) => {
    addEventListener('keydown', function press(event) {
      if (event.key !== ' ' || document.getSelection()?.anchorNode?.textContent?.endsWith('night') !== true) return
      removeEventListener('keydown', press)
      const before = count()
      const look = (): void => {
        if (count() > before) done(performance.now() - event.timeStamp)
        else requestAnimationFrame(look)
      }
      requestAnimationFrame(look)
    })
  })
  Object.assign(window, { marked })
}
