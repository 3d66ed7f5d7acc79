// Watches the folder of the desk: stories, settings and pictures, by whatever program they are changed.

import { basename, relative } from 'node:path'
import { watch } from 'chokidar'
import { toSort } from '../../desk-server/index.ts'
import { toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'

/** Milliseconds in which changes are gathered: a program that saves often writes more than once. */
const GATHER = 100

export async function watchFolder(
  folder: string,
  io: Io,
  tell: (names: readonly string[]) => void,
): Promise<{ close(): Promise<void> }> {
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
  watcher.on('error', () => io.stderr.write('Changes by other programs may not be seen at once here.\n'))
  await new Promise<void>((done) => watcher.once('ready', () => done()))
  return {
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
