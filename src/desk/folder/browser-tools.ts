// What an open story needs of the browser: its clock, its locks between tabs, its store for drafts.

import { createStoredDrafts } from './stored-drafts.ts'
import type { Clock, Folder, KeeperTools, Locks } from './types.ts'

const clock: Clock = {
  now: () => Date.now(),
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds)
    return () => clearTimeout(timer)
  },
}

/** Let go when the tab closes, however it does. Where a browser has none, the version check of each save still holds. */
function createLocks(manager: LockManager | undefined): Locks {
  if (manager === undefined) return { take: async () => () => undefined }
  return {
    take: (key) =>
      new Promise((answer) => {
        void manager
          .request(`battledore-desk/${key}`, { ifAvailable: true }, (lock) => {
            if (lock === null) return answer(undefined)
            return new Promise<void>((release) => answer(() => release()))
          })
          .catch(() => answer(() => undefined))
      }),
  }
}

export function createKeeperTools(folder: Folder): KeeperTools {
  return {
    folder,
    clock,
    locks: createLocks(navigator.locks),
    drafts: createStoredDrafts(globalThis.indexedDB),
    createId: () => crypto.randomUUID(),
  }
}
