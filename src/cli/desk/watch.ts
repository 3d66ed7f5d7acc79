// Watches the folder of the desk: stories, settings and pictures, by whatever program they are changed.

import { basename, relative } from 'node:path'
import { watch } from 'chokidar'
import { toSort } from '../../desk-server/index.ts'
import { toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'

/** Milliseconds in which changes are gathered: a program that saves often writes more than once. */
const GATHER = 100

export interface FolderWatch {
  /** A large folder is gone through first; the page need not wait for that. */
  readonly ready: Promise<void>
  close(): Promise<void>
}

export function watchFolder(folder: string, io: Io, tell: (names: readonly string[]) => void): FolderWatch {
  const changed = new Set<string>()
  let timer: NodeJS.Timeout | undefined
  const watcher = watch(folder, {
    ignoreInitial: true,
    followSymlinks: false,
    ignored: (path, stats) => path !== folder && !isWatched(path, folder, stats?.isFile() === true),
  })
  for (const event of ['add', 'change', 'unlink'] as const)
    watcher.on(event, (path) => {
      changed.add(toSlashes(relative(folder, path)))
      timer ??= setTimeout(() => {
        timer = undefined
        tell([...changed])
        changed.clear()
      }, GATHER)
    })
  // Where watching fails, as over some networks, a save still finds out what has changed.
  let isTold = false
  watcher.on('error', () => {
    if (!isTold) io.stderr.write('Changes by other programs may not be seen at once here.\n')
    isTold = true
  })
  return {
    ready: new Promise<void>((done) => watcher.once('ready', () => done())),
    close() {
      clearTimeout(timer)
      return watcher.close()
    },
  }
}

function isWatched(path: string, folder: string, isFile: boolean): boolean {
  if (isFile) return toSort(toSlashes(relative(folder, path))) !== undefined
  const name = basename(path)
  return name !== 'node_modules' && (!name.startsWith('.') || toSort(name) !== undefined)
}
