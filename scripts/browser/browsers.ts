// Chromium and Firefox from Debian, for tests and for the pictures of the docs: over Chromium's own protocol, and over WebDriver BiDi.

import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import puppeteer, { type Browser, type Page } from 'puppeteer-core'

export type BrowserName = 'chromium' | 'firefox-esr'

export interface OpenBrowser {
  readonly name: BrowserName
  readonly browser: Browser
  /** Where what the page hands over is saved. */
  readonly downloads: string
}

const PATHS: Readonly<Record<BrowserName, string>> = {
  chromium: '/usr/bin/chromium',
  'firefox-esr': '/usr/bin/firefox-esr',
}

export async function openBrowser(name: BrowserName): Promise<OpenBrowser> {
  const downloads = mkdtempSync(join(tmpdir(), 'battledore-downloads-'))
  const common = { executablePath: PATHS[name], headless: true } as const
  if (name === 'chromium') {
    const args = ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage']
    const browser = await puppeteer.launch({ ...common, args })
    const session = await browser.target().createCDPSession()
    await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: downloads })
    return { name, browser, downloads }
  }
  const extraPrefsFirefox = {
    // Its panel would take the keys from the page.
    'browser.download.alwaysOpenPanel': false,
    'browser.download.dir': downloads,
    'browser.download.folderList': 2,
    'browser.download.start_downloads_in_tmp_dir': false,
    'browser.helperApps.neverAsk.saveToDisk': 'application/pdf,text/markdown',
    'pdfjs.disabled': true,
  }
  return { name, browser: await puppeteer.launch({ ...common, browser: 'firefox', extraPrefsFirefox }), downloads }
}

export interface Watched {
  readonly page: Page
  /** Every address that the page asked for, itself among them. */
  readonly asked: readonly string[]
  /** What the page complained of: errors, and what the content policy has refused. */
  readonly complaints: readonly string[]
}

/** A page on which every request is recorded. @param hasTouch as on a tablet: the page is told that a finger points */
export async function openPage(
  { browser }: OpenBrowser,
  width: number,
  height: number,
  hasTouch = false,
): Promise<Watched> {
  const page = await browser.newPage()
  const asked: string[] = []
  const complaints: string[] = []
  page.on('request', (request) => asked.push(request.url()))
  page.on('pageerror', (error) => complaints.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${message.text()} ${message.location().url ?? ''}`.trim())
  })
  await page.setViewport({ width, height, hasTouch })
  return { page, asked, complaints }
}
