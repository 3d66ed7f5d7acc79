// Drafts in a browser's store, as the fake-indexeddb package keeps it: put, found by folder, replaced, removed, and told when there is none.

import { IDBFactory } from 'fake-indexeddb'
import { expect, it } from 'vitest'
import { keepHandle, readHandle } from '../../../src/desk/folder/kept-handle.ts'
import { createStoredDrafts } from '../../../src/desk/folder/stored-drafts.ts'
import type { Draft } from '../../../src/desk/folder/types.ts'
import { toValue } from './world.ts'

const draft = (id: string, at: number, more: Partial<Draft> = {}): Draft => ({
  ...{ id, at, folder: 'one', name: 'hat.md', base: 'new', bytes: new TextEncoder().encode(id) },
  ...more,
})

it('keeps what is put, the newest first, for each folder', async () => {
  const factory = new IDBFactory()
  const drafts = createStoredDrafts(factory)
  await drafts.put(draft('a', 1))
  await drafts.put(draft('b', 2))
  await drafts.put(draft('c', 3, { folder: 'two' }))
  await drafts.put(draft('a', 5, { saving: new Uint8Array([1]) }))
  // Another opening of the page.
  const again = createStoredDrafts(factory)
  expect(toValue(await again.list('one'))).toEqual([draft('a', 5, { saving: new Uint8Array([1]) }), draft('b', 2)])
  await again.remove('a')
  expect(toValue(await drafts.list('one')).map(({ id }) => id)).toEqual(['b'])
})

it('says so where the browser keeps nothing', async () => {
  for (const factory of [undefined, broken('SecurityError')]) {
    const drafts = createStoredDrafts(factory)
    expect(await drafts.put(draft('a', 1))).toMatchObject({ problems: [{ message: 'This browser keeps no drafts' }] })
    expect(await drafts.list('one')).toMatchObject({ ok: false })
  }
  const full = createStoredDrafts(broken('QuotaExceededError'))
  expect(await full.put(draft('a', 1))).toMatchObject({ problems: [{ message: /no room/ }] })
})

function broken(name: string): IDBFactory {
  const open = () => {
    throw Object.assign(new Error(name), { name })
  }
  return { open } as unknown as IDBFactory
}

it('gives the same folder the same id', async () => {
  const factory = new IDBFactory()
  const handle = (name: string) => ({ name, isSameEntry: undefined }) as never
  expect(await readHandle(factory)).toBeUndefined()
  const first = await keepHandle(factory, handle('stories'))
  const kept = await readHandle(factory)
  expect(kept).toEqual(first)
  const same = { name: 'stories', isSameEntry: async () => true } as never
  expect((await keepHandle(factory, same)).id).toBe(first.id)
})
