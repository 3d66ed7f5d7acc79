// Drafts in the browser's own store (IndexedDB): they outlive a crash of the page, of the browser and of the machine.

import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Draft, Drafts } from './types.ts'

const NAME = 'battledore-desk'
const DRAFTS = 'drafts'

/** Other things that the browser must keep for us lie in stores of their own: the handle of the picked folder. */
export const STORES = [DRAFTS, 'handles'] as const

/** @param factory `indexedDB`, or what stands in for it in a test; undefined where the browser has none */
export function createStoredDrafts(factory: IDBFactory | undefined): Drafts {
  return {
    put: (draft) => tryAll(factory, DRAFTS, 'readwrite', (store) => store.put(draft)),
    remove: (id) => tryAll(factory, DRAFTS, 'readwrite', (store) => store.delete(id)),
    async list(folder) {
      const all = await runIn<Draft[]>(factory, DRAFTS, 'readonly', (store) => store.getAll())
      if (!all.ok) return all
      const own = all.value.filter((draft) => draft.folder === folder)
      return succeed(own.sort((one, other) => other.at - one.at))
    },
  }
}

async function tryAll(
  factory: IDBFactory | undefined,
  store: (typeof STORES)[number],
  mode: IDBTransactionMode,
  run: (store: IDBObjectStore) => IDBRequest,
): Promise<Result<undefined>> {
  const done = await runIn(factory, store, mode, run)
  return done.ok ? succeed(undefined) : done
}

/** Answers when the store has it for good, not when it has only taken it. */
export async function runIn<Value>(
  factory: IDBFactory | undefined,
  store: (typeof STORES)[number],
  mode: IDBTransactionMode,
  run: (store: IDBObjectStore) => IDBRequest<Value>,
): Promise<Result<Value>> {
  try {
    if (factory === undefined) throw new Error('no store')
    const base = await open(factory)
    try {
      return succeed(
        await new Promise<Value>((done, refuse) => {
          // `strict`: on the disk, since a machine may go out too.
          const transaction = base.transaction(store, mode, { durability: 'strict' })
          const request = run(transaction.objectStore(store))
          transaction.oncomplete = () => done(request.result)
          transaction.onerror = () => refuse(transaction.error)
          transaction.onabort = () => refuse(transaction.error)
        }),
      )
    } finally {
      base.close()
    }
  } catch (error) {
    return fail(toNoDrafts(error))
  }
}

function open(factory: IDBFactory): Promise<IDBDatabase> {
  return new Promise((done, refuse) => {
    const request = factory.open(NAME, 1)
    request.onupgradeneeded = () => {
      for (const name of STORES) request.result.createObjectStore(name, name === DRAFTS ? { keyPath: 'id' } : undefined)
    }
    request.onsuccess = () => done(request.result)
    request.onerror = () => refuse(request.error)
    request.onblocked = () => refuse(new Error('blocked'))
  })
}

function toNoDrafts(error: unknown) {
  const isFull = error instanceof Error && error.name === 'QuotaExceededError'
  return {
    code: 'unreadable-file',
    message: isFull ? 'This browser has no room left for drafts' : 'This browser keeps no drafts',
    note: 'What is not saved is lost if it closes unexpectedly. A private window never keeps any.',
  } as const
}
