// A picked folder and single files: versions hold, nothing leads out, and what the browser refuses is told.

import { expect, it } from 'vitest'
import { openPicked } from '../../../src/desk/folder/picked.ts'
import { createSingle } from '../../../src/desk/folder/single.ts'
import { createTestFolder } from './handles.ts'
import { toText, toValue } from './world.ts'

const FILES = { 'hat.md': 'Tam.\r\n', 'red/tib.md': 'Tib.\n', 'battledore.yaml': '', '.git/x.md': '', 'notes.txt': '' }
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)

it('lists, reads and saves with the version', async () => {
  const { handle, tree } = createTestFolder(FILES)
  const folder = openPicked(handle, 'id', () => () => undefined)
  expect(toValue(await folder.list()).map(({ name }) => name)).toEqual(['battledore.yaml', 'hat.md', 'red/tib.md'])
  const { version } = toValue(await folder.read('red/tib.md'))
  const saved = await folder.save('red/tib.md', bytes('Tib sat.\n'), version)
  expect(saved).toMatchObject({ kind: 'saved' })
  expect(toText(toValue(await folder.read('red/tib.md')).bytes)).toBe('Tib sat.\n')
  expect(await folder.save('red/tib.md', bytes('x'), version)).toMatchObject({ kind: 'changed', theirs: {} })
  expect(await folder.save('fox.md', bytes('x'), version)).toEqual({ kind: 'changed', theirs: undefined })
  expect(await folder.save('blue/fox.md', bytes('A fox.'), 'new')).toMatchObject({ kind: 'saved' })
  expect(await folder.save('blue/fox.md', bytes('x'), 'new')).toMatchObject({ kind: 'changed' })
  expect([...tree.keys()]).toContain('blue')
})

it('leads nowhere else', async () => {
  const { handle } = createTestFolder(FILES)
  const folder = openPicked(handle, 'id', () => () => undefined)
  for (const name of ['../x.md', '.git/x.md', 'notes.txt', 'red/../hat.md'])
    expect(await folder.read(name)).toMatchObject({ problems: [{ code: 'missing-file' }] })
  expect(await folder.save('notes.txt', bytes('x'), 'new')).toMatchObject({ kind: 'refused' })
  expect(await folder.save('hat.png', bytes('x'), 'new')).toMatchObject({ kind: 'refused' })
})

it('tells a lost permission from a full disk', async () => {
  const { handle, fail } = createTestFolder(FILES)
  const folder = openPicked(handle, 'id', () => () => undefined)
  const { version } = toValue(await folder.read('hat.md'))
  fail('NotAllowedError')
  expect(await folder.save('hat.md', bytes('x'), version)).toMatchObject({ kind: 'lost' })
  expect(await folder.read('hat.md')).toMatchObject({ problems: [{ code: 'folder-lost' }] })
  fail('NotFoundError')
  expect(await folder.read('hat.md')).toMatchObject({ problems: [{ code: 'folder-lost' }] })
  fail('QuotaExceededError')
  expect(await folder.save('hat.md', bytes('x'), version)).toMatchObject({
    kind: 'refused',
    problem: { message: 'The disk is full: nothing was written' },
  })
  fail(undefined)
  expect(toText(toValue(await folder.read('hat.md')).bytes)).toBe('Tam.\r\n')
})

it('hands single files over as downloads, and knows them again', async () => {
  const handed: [string, string][] = []
  const folder = await createSingle({
    download: (name, content) => handed.push([name, toText(content)]),
    given: { 'battledore.yaml': bytes('names: [Tam]\n') },
    drafted: ['fox.md'],
  })
  const heard: unknown[] = []
  folder.watch((names) => heard.push(names))
  await folder.add('hat.md', bytes('Tam.\r\n'))
  expect(toValue(await folder.list()).map(({ name }) => name)).toEqual(['battledore.yaml', 'fox.md', 'hat.md'])
  const { version } = toValue(await folder.read('hat.md'))
  expect(await folder.save('hat.md', bytes('Tam sat.\r\n'), version)).toMatchObject({ kind: 'saved' })
  expect(handed).toEqual([['hat.md', 'Tam sat.\r\n']])
  expect(toText(toValue(await folder.read('hat.md')).bytes)).toBe('Tam sat.\r\n')
  // Read bytes may be handed on to a worker, as `transfer` does.
  structuredClone(0, { transfer: [toValue(await folder.read('hat.md')).bytes.buffer as ArrayBuffer] })
  expect(toText(toValue(await folder.read('hat.md')).bytes)).toBe('Tam sat.\r\n')
  expect(await folder.read('fox.md')).toMatchObject({ problems: [{ code: 'missing-file' }] })
  expect(heard).toEqual([['hat.md'], ['hat.md']])
})
