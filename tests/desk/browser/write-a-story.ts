// One story, from an empty folder to the print, by whatever hand: what is typed, pressed and chosen.

import type { Page } from 'puppeteer-core'
import { type Hand, type } from './hands.ts'

const STORY = {
  title: 'Sid and the Bun',
  step: 'pink-4',
  /** As typed: `won` cannot be read at this step, and `got` is put in its place. */
  pages: [['Sid won a bun.'], ['The bun is big.', 'Zub sat on it.'], ['Sid is sad.']],
} as const

/** The file as it must be on the disk. */
export const FILE = `---
step: pink-4
---

# Sid and the Bun

Sid got a bun.

---

The bun is big.

Zub sat on it.

---

Sid is sad.
`

/** What must stand on the paper. */
export const SENTENCES = ['Sid and the Bun', 'Sid got a bun.', 'The bun is big.', 'Zub sat on it.', 'Sid is sad.']

export async function writeStory(page: Page, hand: Hand): Promise<void> {
  await hand.press('New story')
  await hand.fill('Title', STORY.title)
  await hand.choose('Step that its readers have reached', STORY.step)
  await hand.press('Begin the story')
  await page.waitForSelector('.cm-content')
  for (const [at, paragraphs] of STORY.pages.entries()) {
    if (at > 0) await hand.newPage()
    else await hand.toText()
    for (const [number, paragraph] of paragraphs.entries()) {
      if (number > 0) await page.keyboard.press('Enter')
      await type(page, paragraph)
    }
  }
  await page.waitForFunction(() => [...document.querySelectorAll('mark')].some((one) => one.textContent === 'won'))
  await hand.openCard('won')
  await waitForOpenWord(page)
  await hand.press('got')
  await page.waitForFunction(() => document.querySelector('.cm-content')?.textContent?.includes('Sid got a bun.'))
}

/** The word whose card is open can be seen, though on a tablet the panel has come up over the lower half. */
const waitForOpenWord = (page: Page) =>
  page.waitForFunction(() => {
    const box = document.querySelector('.place-open')?.getBoundingClientRect()
    const text = document.querySelector('.cm-scroller')?.getBoundingClientRect()
    return box && text && box.top >= text.top && box.bottom <= text.bottom && document.querySelector('.card') !== null
  })

/** The print: the sheet is opened, the PDF is made and saved. */
export async function printStory(page: Page, hand: Hand): Promise<void> {
  await hand.press('Print')
  await hand.press('Make the PDF')
  await page.waitForSelector('.printed')
  await hand.press('Save it')
}

/** To the last spread of the book and back into the text. */
export async function lookAtBook(page: Page, hand: Hand): Promise<void> {
  await hand.press('Book')
  await page.waitForSelector('.spread img')
  await hand.press('Next')
  await page.waitForFunction(() => document.querySelectorAll('.spread .leaf').length === 2)
}
