// The folder of the page against the real server over the network of this machine: bytes, versions, news, and a desk that was closed.

import * as fs from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { createPageFiles } from '../../../src/cli/desk/page-files.ts'
import { createStore } from '../../../src/cli/desk/store.ts'
import { watchFolder } from '../../../src/cli/desk/watch.ts'
import { openServed } from '../../../src/desk/folder/served.ts'
import type { Folder } from '../../../src/desk/folder/types.ts'
import { type DeskServer, startDeskServer } from '../../../src/desk-server/index.ts'
import { createWorld, type TestWorld } from '../../cli/io.ts'
import { toText, toValue } from './world.ts'

let world: TestWorld
let server: DeskServer
let folder: Folder
const pages: number[] = []
const start = (port = 0): Promise<DeskServer> =>
  startDeskServer(port, {
    store: createStore(world.cwd, world.io),
    pageFile: createPageFiles,
    onPages: (count) => pages.push(count),
  })
const openFolder = (token = server.address.split('#')[1] ?? ''): Promise<Folder> =>
  openServed({ token, fetch: (path, init) => fetch(`http://127.0.0.1:${server.port}${path}`, init) })

beforeEach(async () => {
  world = createWorld({
    'hat.md': 'Tam had a hat.\r\n',
    'Zoë & co/ünter 100%.md': '\uFEFFZoë.\r',
    'ours.yaml': 'name: ours\n',
  })
  server = await start()
  folder = await openFolder()
  pages.length = 0
})
afterEach(async () => {
  await server.close()
  world.remove()
})

it('lists and reads every byte, whatever the name', async () => {
  expect(toValue(await folder.list())).toEqual([
    { name: 'Zoë & co/ünter 100%.md', sort: 'story', size: 9, isLeftOut: false },
    { name: 'hat.md', sort: 'story', size: 16, isLeftOut: false },
    { name: 'ours.yaml', sort: 'yaml', size: 11 },
  ])
  expect(toText(toValue(await folder.read('Zoë & co/ünter 100%.md')).bytes)).toBe('\uFEFFZoë.\r')
  expect(await folder.read('fox.md')).toMatchObject({ ok: false, problems: [{ code: 'missing-file' }] })
})

it('saves the version that it read, and no other', async () => {
  const { version } = toValue(await folder.read('hat.md'))
  const bytes = new TextEncoder().encode('Tam sat.\r\n')
  const saved = await folder.save('hat.md', bytes, version)
  expect(saved).toEqual({ kind: 'saved', version: toValue(await folder.read('hat.md')).version })
  expect(world.read('hat.md')).toBe('Tam sat.\r\n')
  const again = await folder.save('hat.md', bytes, version)
  expect(again.kind === 'changed' && again.theirs && toText(again.theirs.bytes)).toBe('Tam sat.\r\n')
  expect(await folder.save('hat.md', bytes, 'new')).toMatchObject({ kind: 'changed' })
  fs.rmSync(join(world.cwd, 'hat.md'))
  expect(await folder.save('hat.md', bytes, version)).toEqual({ kind: 'changed', theirs: undefined })
  expect(await folder.save('red/new.md', bytes, 'new')).toMatchObject({ kind: 'saved' })
})

it('tells why a save was refused', async () => {
  fs.chmodSync(join(world.cwd, 'hat.md'), 0o444)
  const { version, locked } = toValue(await folder.read('hat.md'))
  expect(locked).toMatchObject({ message: '`hat.md` is write-protected: allow changes to it first' })
  expect(await folder.save('hat.md', new Uint8Array(), version)).toEqual({ kind: 'refused', problem: locked })
  expect(await folder.save('../hat.md', new Uint8Array(), 'new')).toMatchObject({ kind: 'refused' })
  expect(await folder.save('big.md', new Uint8Array(2 * 1024 * 1024 + 1), 'new')).toMatchObject({
    problem: { code: 'too-large' },
  })
})

it('hears of changes by other programs, and the server knows that a page is open', async () => {
  const watcher = watchFolder(world.cwd, world.io, (names) => server.tell(names))
  await watcher.ready
  const heard: (readonly string[] | undefined)[] = []
  const stop = folder.watch((names) => heard.push(names))
  await until(() => pages.at(-1) === 1)
  world.write({ 'hat.md': 'Theirs.\n' })
  await until(() => heard.some((names) => names?.includes('hat.md')))
  stop()
  await until(() => pages.at(-1) === 0)
  await watcher.close()
})

it('is lost when the desk is closed, and found again when it is opened on the same port', async () => {
  const { port } = server
  const heard: (readonly string[] | undefined)[] = []
  const stop = folder.watch((names) => heard.push(names))
  await until(() => pages.at(-1) === 1)
  await server.close()
  await until(() => heard.length > 0)
  expect(await folder.read('hat.md')).toMatchObject({ problems: [{ code: 'folder-lost' }] })
  expect(await folder.save('hat.md', new Uint8Array(), 'new')).toMatchObject({ kind: 'lost' })
  server = await start(port)
  // Another run has another token: the page is told to be opened anew.
  expect(await folder.save('hat.md', new Uint8Array(), 'new')).toMatchObject({
    kind: 'lost',
    problem: { note: 'Open the address that `battledore desk` printed last.' },
  })
  expect((await openFolder()).id).toBe(folder.id)
  stop()
})

it('cannot be opened with a wrong token', async () => {
  await expect(openFolder('x')).rejects.toThrow('does not know this page')
})

async function until(isSo: () => boolean): Promise<void> {
  for (let turn = 0; turn < 400 && !isSo(); turn++) await new Promise((done) => setTimeout(done, 25))
  expect(isSo()).toBe(true)
}
