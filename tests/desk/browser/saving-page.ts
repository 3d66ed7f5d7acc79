// A story of the shelf, opened on the page, and what a test waits for there.

import type { Page } from 'puppeteer-core'
import { type OpenBrowser, openPage } from '../../../scripts/browser/browsers.ts'
import { mouse } from './hands.ts'

/** The first book of fixtures/shelf. */
export const STORY = '01-tam-and-the-hat.md'

export const waitForNotice = (page: Page, words: string) =>
  page.waitForFunction((text) => document.querySelector('.notice')?.textContent?.includes(text), {}, words)

export const waitForText = (page: Page, words: string) =>
  page.waitForFunction((text) => document.querySelector('.cm-content')?.textContent?.includes(text), {}, words)

export const waitForSaved = (page: Page) =>
  page.waitForFunction(() => document.querySelector('.save-state')?.textContent?.startsWith('Saved '))

export const waitForStatus = (page: Page, words: string) =>
  page.waitForFunction((text) => document.querySelector('.status')?.textContent?.includes(text), {}, words)

/** What the page promises within half a second of the last key: the browser holds a draft. */
export const waitForDraft = (page: Page, words: string) =>
  page.waitForFunction(
    (text) =>
      new Promise<boolean>((done) => {
        const asked = indexedDB.open('battledore-desk')
        asked.onerror = () => done(false)
        asked.onsuccess = () => {
          const base = asked.result
          const all = base.transaction('drafts').objectStore('drafts').getAll()
          all.onsuccess = () => {
            base.close()
            const drafts = all.result as { bytes: Uint8Array }[]
            done(drafts.some(({ bytes }) => new TextDecoder().decode(bytes).includes(text)))
          }
        }
      }),
    { polling: 100 },
    words,
  )

/** Open, checked, and in the place where it can be written. */
export async function openStoryPage(open: OpenBrowser, address: string, title: string): Promise<Page> {
  const { page } = await openPage(open, 1280, 800)
  await page.goto(address)
  await mouse(page).press(`Open ${title}`)
  await page.waitForSelector('.cm-content')
  await page.waitForFunction(() => document.querySelector('.page-head span')?.textContent !== '')
  return page
}

/** Opened again: what was typed and not saved is taken back, stands on the screen, and is saved. */
export async function takeDraft(open: OpenBrowser, address: string, title: string, words: string): Promise<void> {
  const page = await openStoryPage(open, address, title)
  await waitForNotice(page, 'that were not saved')
  await mouse(page).press('Take them')
  // Only what is on the screen is drawn.
  await mouse(page).toText()
  await waitForText(page, words)
  await waitForSaved(page)
  await page.close()
}
