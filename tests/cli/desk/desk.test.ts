// `battledore desk` as a command: where it listens, what it says, when it ends, and the page as one file.

import * as fs from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openBrowser } from '../../../src/cli/desk/browser.ts'
import { type DeskOptions, runDesk } from '../../../src/cli/desk/run.ts'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld
beforeEach(() => {
  world = createWorld({
    'stories/hat.md': 'Tam had a hat.\n',
    'stories/battledore.yaml': 'names: [Tam]\n',
    'stories/readers/meg.yaml': 'name: Meg </script>\nstep: pink-4\n',
  })
})
afterEach(() => world.remove())

const OPTIONS: DeskOptions = { port: '0', open: false }

/** Runs until `use` is done, then ends it as Ctrl C does. */
async function withDesk(options: Partial<DeskOptions>, use: (address: URL) => Promise<void>): Promise<number> {
  const end = new AbortController()
  const running = runDesk('stories', { ...OPTIONS, ...options }, world.io, { signal: end.signal, patience: 100 })
  const address = await findAddress()
  await use(address)
  end.abort()
  return running
}

async function findAddress(): Promise<URL> {
  for (let turn = 0; turn < 400; turn++) {
    const [address] = /http:\S+/.exec(world.out()) ?? []
    if (address !== undefined && world.out().includes('Ctrl C')) return new URL(address)
    await new Promise((done) => setTimeout(done, 25))
  }
  throw new Error(`no address: ${world.out()}${world.err()}`)
}

const ask = (address: URL, path: string, init: RequestInit = {}): Promise<Response> =>
  fetch(new URL(path, address.origin), { ...init, headers: { 'x-desk-token': address.hash.slice(1) } })

describe('serving', () => {
  it('prints an address of this machine alone, and ends by Ctrl C', async () => {
    const code = await withDesk({}, async (address) => {
      expect(address.hostname).toBe('127.0.0.1')
      const page = await ask(address, '/')
      expect(await page.text()).toContain('<div id="desk">')
      for (const name of ['app.js', 'worker.js', 'style.css', 'data/lexicon.bin', 'data/fonts/andika.ttf'])
        expect((await ask(address, `/${name}`)).status).toBe(200)
      const list = (await (await ask(address, '/api/list')).json()) as { readonly files: readonly { name: string }[] }
      expect(list.files.map(({ name }) => name)).toEqual(['battledore.yaml', 'hat.md', 'readers/meg.yaml'])
    })
    expect([code, world.err()]).toEqual([0, ''])
  })

  it('takes the next port where one is taken, and says so', async () => {
    const other: Server = createServer()
    await new Promise<void>((done) => other.listen(0, '127.0.0.1', done))
    const { port } = other.address() as AddressInfo
    await withDesk({ port: String(port) }, async (address) => {
      expect(Number(address.port)).toBeGreaterThan(port)
      expect(world.out()).toContain(`Port ${port} is taken`)
    })
    other.close()
  })

  it('ends by itself when the last page has been closed for a while', async () => {
    const running = runDesk('stories', OPTIONS, world.io, { patience: 100 })
    const address = await findAddress()
    const page = new AbortController()
    await ask(address, '/api/watch', { signal: page.signal })
    page.abort()
    expect(await running).toBe(0)
    expect(world.out()).toContain('The last page was closed')
  })

  it('waits for the first page, and for one that is opened again soon', async () => {
    await withDesk({}, async (address) => {
      await new Promise((done) => setTimeout(done, 300))
      const [first, second] = [new AbortController(), new AbortController()]
      await ask(address, '/api/watch', { signal: first.signal })
      first.abort()
      await ask(address, '/api/watch', { signal: second.signal })
      await new Promise((done) => setTimeout(done, 300))
      expect(world.out()).not.toContain('The last page was closed')
    })
  })

  it('stays where it is told to', async () => {
    await withDesk({ stay: true }, async (address) => {
      const page = new AbortController()
      await ask(address, '/api/watch', { signal: page.signal })
      page.abort()
      await new Promise((done) => setTimeout(done, 300))
      expect((await ask(address, '/api/list')).status).toBe(200)
    })
  })

  it('says that settings above the folder do not count', async () => {
    world.write({ 'battledore.yaml': 'names: [Zub]\n' })
    await withDesk({}, async () => {
      expect(world.out()).toContain('`battledore.yaml` lies above this folder, so the desk does not see it')
    })
  })
})

describe('wrong use in one line', () => {
  it.each([
    [['desk', 'nowhere'], 'There is no folder `nowhere`.'],
    [['desk', 'stories/hat.md'], 'There is no folder `stories/hat.md`.'],
    [['desk', '--port', '80'], '--port is a whole number from 1024 to 65535, not `80`.'],
    [['desk', '--port', 'x'], '--port is a whole number from 1024 to 65535, not `x`.'],
    [['desk', '--with-settings'], '--with-settings goes with --one-file FILE.'],
  ])('%j', async (argv, message) => {
    expect(await main(argv, world.io)).toBe(2)
    expect(world.err()).toBe(`battledore: ${message}\n`)
  })

  it('no browser is no trouble', async () => {
    const { PATH } = process.env
    process.env['PATH'] = ''
    try {
      openBrowser('http://127.0.0.1:1/', world.io, 'linux')
      for (let turn = 0; turn < 100 && world.err() === ''; turn++) await new Promise((done) => setTimeout(done, 20))
      expect(world.err()).toBe('No browser could be opened: open the address above yourself.\n')
    } finally {
      process.env['PATH'] = PATH
    }
  })
})

describe('the page as one file', () => {
  it('is written whole, no larger than 6 MB, and asks nothing', async () => {
    expect(await main(['desk', 'stories', '--one-file', 'desk.html'], world.io)).toBe(0)
    expect(world.out()).toBe('`desk.html` is the desk as one file. It opens with a double click.\n')
    const html = world.read('desk.html')
    expect(Buffer.byteLength(html)).toBeLessThanOrEqual(6_000_000)
    expect(html).not.toMatch(/\s(?:src|href)="(?!data:)/)
    const [policy = ''] = /content-security-policy" content="([^"]+)"/.exec(html)?.slice(1) ?? []
    expect(policy).toContain("default-src 'none'")
    expect(policy).not.toMatch(/connect-src|https?:|unsafe-eval|\*/)
    expect(html).toContain('<noscript>')
    expect(html).not.toContain('data-name="settings"')
  })

  it('takes settings, sequences and readers with it, and nothing that ends a script', async () => {
    expect(await main(['desk', 'stories', '--one-file', 'desk.html', '--with-settings'], world.io)).toBe(0)
    expect(world.out()).toContain('with battledore.yaml, readers/meg.yaml inside')
    expect(world.out()).toContain('names of children')
    const [, json = ''] = /data-name="settings">(.*?)<\/script>/s.exec(world.read('desk.html')) ?? []
    expect(JSON.parse(json)).toEqual({
      'battledore.yaml': 'names: [Tam]\n',
      'readers/meg.yaml': 'name: Meg </script>\nstep: pink-4\n',
    })
  })

  it('speaks of the names of children only where a reader is inside', async () => {
    const own = createWorld({ 'stories/battledore.yaml': 'step: pink-4\nnames: [Tam]\n' })
    expect(await main(['desk', 'stories', '--one-file', 'desk.html', '--with-settings'], own.io)).toBe(0)
    expect(own.out()).toContain('with battledore.yaml inside')
    expect(own.out()).not.toContain('names of children')
    own.remove()
  })

  it('says why it cannot be written', async () => {
    fs.mkdirSync(join(world.cwd, 'desk.html'))
    expect(await main(['desk', 'stories', '--one-file', 'desk.html'], world.io)).toBe(2)
    expect(world.err()).toContain('`desk.html` is a folder, not a file')
  })
})
