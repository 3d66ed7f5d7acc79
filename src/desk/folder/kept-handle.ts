// The folder that was picked last, kept in the browser: it can be opened again with one press.

import type { FolderHandle } from './picked.ts'
import { runIn } from './stored-drafts.ts'

export interface KeptHandle {
  readonly handle: FolderHandle
  /** Drafts are kept under it. */
  readonly id: string
}

const KEY = 'last'

export async function readHandle(factory: IDBFactory | undefined): Promise<KeptHandle | undefined> {
  const found = await runIn<KeptHandle | undefined>(factory, 'handles', 'readonly', (store) => store.get(KEY))
  return found.ok ? found.value : undefined
}

/** The same folder, picked again, goes by the same id. */
export async function keepHandle(factory: IDBFactory | undefined, handle: FolderHandle): Promise<KeptHandle> {
  const before = await readHandle(factory)
  if (before && (await handle.isSameEntry(before.handle))) return before
  const kept = { handle, id: crypto.randomUUID() }
  // Where nothing can be kept, it is picked anew each time.
  await runIn(factory, 'handles', 'readwrite', (store) => store.put(kept, KEY))
  return kept
}
