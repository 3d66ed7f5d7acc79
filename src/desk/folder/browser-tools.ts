// What an open story needs of the browser: its clock, its locks between tabs, its store for drafts.

import type { Tabs } from './served.ts'
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

/** Undefined where the browser has no locks or no channel between tabs. @param id the folder's, or whatever they share */
export function createTabs(id: string): Tabs | undefined {
  const manager = navigator.locks as LockManager | undefined
  if (manager === undefined || globalThis.BroadcastChannel === undefined) return undefined
  const name = `battledore-desk/watch/${id}`
  const channel = new BroadcastChannel(name)
  const listeners = new Set<(names: readonly string[] | undefined) => void>()
  const tell = (names: readonly string[] | undefined): void => {
    for (const listener of [...listeners]) listener(names)
  }
  channel.onmessage = ({ data }: MessageEvent<{ readonly names: readonly string[] | undefined }>) => tell(data.names)
  return {
    lead(run, signal) {
      manager.request(name, { signal }, run).catch(() => undefined)
    },
    pass(names) {
      // A channel does not hear itself.
      tell(names)
      channel.postMessage({ names })
    },
    hear(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}
