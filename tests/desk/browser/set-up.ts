// What the tests in browsers begin with: a browser for all tests of a block, and a copy of the demo shelf.

import { cpSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll } from 'vitest'
import { type BrowserName, type OpenBrowser, openBrowser } from '../../../scripts/browser/browsers.ts'
import { ROOT } from '../../console.ts'

export const BROWSERS: readonly BrowserName[] = ['chromium', 'firefox-esr']

/** Called in a block of tests: opened before the first of them, closed after the last. */
export function useBrowser(name: BrowserName): () => OpenBrowser {
  let open: OpenBrowser
  beforeAll(async () => {
    open = await openBrowser(name)
  })
  afterAll(async () => {
    await open?.browser.close()
  })
  return () => open
}

export function copyShelf(folder: string): string {
  cpSync(join(ROOT, 'fixtures', 'shelf'), folder, { recursive: true })
  return folder
}

/** A new folder with the stories of fixtures/shelf. */
export const makeShelf = (label: string): string => copyShelf(mkdtempSync(join(tmpdir(), `battledore-${label}-`)))
