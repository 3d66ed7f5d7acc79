// The page in a real browser over the real server and as one file: what is typed is on the disk, a crash loses nothing, and
// nobody is asked but the page's own address.

import * as fs from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest'
import { createPageFiles } from '../../../src/cli/desk/page-files.ts'
import { createStore } from '../../../src/cli/desk/store.ts'
import { type FolderWatch, watchFolder } from '../../../src/cli/desk/watch.ts'
import { type DeskServer, startDeskServer } from '../../../src/desk-server/index.ts'
import { createWorld, type TestWorld } from '../../cli/io.ts'
import { ROOT } from '../../console.ts'
import { describeWith } from '../../tools.ts'

// Starting Chromium as root in a closed network needs these.
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking']
const STORY = '\uFEFF---\r\ntitle: The Hat\r\nstep: pink-4\r\n---\r\n\r\nTam had a hat.\r\n'

/** Typed at the end of the last line. */
const withMore = (text: string): string => STORY.replace(/\r\n$/, `${text}\r\n`)

describeWith('chromium', 'the desk in Chromium', () => {
  let browser: Browser
  let context: BrowserContext
  let world: TestWorld
  let server: DeskServer
  let watcher: FolderWatch
  /** What the browser asked for, and what it complained of. */
  let asked: string[]
  let complaints: string[]
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ARGS })
  })
  afterAll(() => browser.close())
  beforeEach(async () => {
    world = createWorld({ 'hat.md': STORY })
    server = await startDeskServer(0, { store: createStore(world.cwd, world.io), pageFile: createPageFiles })
    watcher = watchFolder(world.cwd, world.io, (names) => server.tell(names))
    await watcher.ready
    context = await browser.newContext({ acceptDownloads: true })
    context.setDefaultTimeout(10_000)
    asked = []
    complaints = []
    context.on('request', (request) => asked.push(request.url()))
    context.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
    })
    context.on('weberror', (error) => complaints.push(error.error().message))
  })
  afterEach(async () => {
    await context.close()
    await watcher.close()
    await server.close()
    world.remove()
  })

  async function openStory(): Promise<Page> {
    const page = await context.newPage()
    await page.goto(server.address)
    await page.getByRole('button', { name: 'Open The Hat' }).click()
    await page.locator('.cm-content').click()
    await page.keyboard.press('Control+End')
    return page
  }
  const until = async (isSo: () => boolean): Promise<void> => {
    for (let turn = 0; turn < 400 && !isSo(); turn++) await new Promise((done) => setTimeout(done, 25))
    expect(isSo()).toBe(true)
  }

  it('saves what is typed, keeps every other byte, and asks only its own address', async () => {
    const page = await openStory()
    await page.keyboard.type('Tam sat.\nTam ran.')
    await until(() => world.read('hat.md').includes('ran'))
    // Enter begins a new paragraph; the line end at the end of the file stays behind it.
    expect(world.read('hat.md')).toBe(withMore('Tam sat.\r\n\r\nTam ran.'))
    expect(page.url()).toBe(`http://127.0.0.1:${server.port}/`)
    const strange = asked.filter(
      (url) => !url.startsWith(`http://127.0.0.1:${server.port}/`) && !/^(?:data|blob):/.test(url),
    )
    expect(strange).toEqual([])
    expect(asked.length).toBeGreaterThan(5)
    expect(complaints).toEqual([])
  })

  it('shows what another program writes, and never writes over it', async () => {
    const page = await openStory()
    fs.writeFileSync(join(world.cwd, 'hat.md'), STORY.replace('hat.', 'cap.'))
    await page.locator('.cm-content', { hasText: 'Tam had a cap.' }).waitFor()
    await page.keyboard.press('Control+End')
    await page.keyboard.type('Mine.')
    fs.writeFileSync(join(world.cwd, 'hat.md'), 'Theirs.\n')
    await page.getByText('Another program has changed this story').first().waitFor()
    await page.keyboard.type('More.')
    await new Promise((done) => setTimeout(done, 2500))
    expect(world.read('hat.md')).toBe('Theirs.\n')
    expect(await page.locator('.cm-content').textContent()).toContain('Mine.More.')
  })

  it('loses nothing when the browser dies within a second', async () => {
    const page = await openStory()
    await page.keyboard.type('Tam sat.')
    await new Promise((done) => setTimeout(done, 600))
    // The process of the page is gone at once, with no time to say goodbye.
    const talk = await context.newCDPSession(page)
    void talk.send('Page.crash').catch(() => undefined)
    await page.waitForEvent('crash')
    expect(world.read('hat.md')).toBe(STORY)
    const again = await openStory()
    await again.getByText('not saved').first().waitFor()
    expect(world.read('hat.md')).toBe(STORY)
  })

  it('can only be read in a second tab', async () => {
    await openStory()
    const second = await openStory()
    await second.keyboard.type('Second.')
    await second.getByText('open in another tab').first().waitFor()
    await new Promise((done) => setTimeout(done, 2000))
    expect(world.read('hat.md')).toBe(STORY)
  })

  it('works in more tabs than a browser has connections', async () => {
    for (let tab = 0; tab < 8; tab++) {
      const page = await context.newPage()
      await page.goto(server.address)
      await page.getByRole('button', { name: 'Open The Hat' }).waitFor()
    }
    const page = await openStory()
    await page.keyboard.type('Tam sat.')
    await until(() => world.read('hat.md').includes('sat'))
    fs.writeFileSync(join(world.cwd, 'new.md'), '---\ntitle: New\nstep: pink-4\n---\n\nA hen.\n')
    const [first] = context.pages()
    await first?.getByRole('button', { name: 'Open New' }).waitFor()
  })

  it('works as one file without a network, and downloads what is saved', async () => {
    await context.setOffline(true)
    const page = await context.newPage()
    await page.goto(pathToFileURL(join(ROOT, 'dist', 'battledore-desk.html')).href)
    const chooser = page.waitForEvent('filechooser')
    await page.getByRole('button', { name: 'Open single files' }).click()
    await (await chooser).setFiles([join(world.cwd, 'hat.md')])
    await page.getByRole('button', { name: 'Open The Hat' }).click()
    await page.locator('.cm-content').click()
    await page.keyboard.press('Control+End')
    await page.keyboard.type('Tam won.')
    await page.getByText('1 cannot be read yet').first().waitFor()
    const download = page.waitForEvent('download')
    await page.keyboard.press('Control+s')
    const file = await (await download).path()
    expect((await download).suggestedFilename()).toBe('hat.md')
    expect(fs.readFileSync(file, 'utf8')).toBe(withMore('Tam won.'))
    expect(asked.filter((url) => !/^(?:file|blob|data):/.test(url))).toEqual([])
    expect(complaints).toEqual([])
  })

  it('works as one file in a folder of the maker', async () => {
    const html = fs.readFileSync(join(ROOT, 'dist', 'battledore-desk.html'))
    const files = createServer((_, response) => response.setHeader('content-type', 'text/html').end(html))
    await new Promise<void>((done) => files.listen(0, '127.0.0.1', done))
    const page = await context.newPage()
    // The browser's own window for folders cannot be pressed by a test; its private folder has the same handles.
    await page.addInitScript(() => {
      Object.assign(window, { showDirectoryPicker: () => navigator.storage.getDirectory() })
    })
    // A page opened as a file has no private folder, so the file is put on a server.
    await page.goto(`http://127.0.0.1:${(files.address() as AddressInfo).port}/`)
    await page.evaluate(async (text) => {
      const folder = await navigator.storage.getDirectory()
      const stream = await (await folder.getFileHandle('hat.md', { create: true })).createWritable()
      await stream.write(text)
      await stream.close()
    }, STORY)
    await page.getByRole('button', { name: 'Choose the folder' }).click()
    await page.getByRole('button', { name: 'Open The Hat' }).click()
    await page.locator('.cm-content').click()
    await page.keyboard.press('Control+End')
    await page.keyboard.type('Tam sat.')
    const read = () =>
      page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory()
        const bytes = new Uint8Array(await (await (await folder.getFileHandle('hat.md')).getFile()).arrayBuffer())
        return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
      })
    for (let turn = 0; turn < 100 && !(await read()).includes('sat'); turn++)
      await new Promise((done) => setTimeout(done, 100))
    expect(await read()).toBe(withMore('Tam sat.'))
    await page.reload()
    await page.getByRole('button', { name: 'again' }).waitFor()
    expect(complaints).toEqual([])
    files.closeAllConnections()
    files.close()
  })
})
