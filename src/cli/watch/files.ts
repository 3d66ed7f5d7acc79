// Watches the folders and files that a check was asked for.

import { basename, dirname, resolve } from 'node:path'
import { type FSWatcher, watch } from 'chokidar'
import { CONFIG_NAMES } from '../../config/index.ts'
import { STORY_NAME } from '../../files/index.ts'
import { IGNORE_FILES } from '../files/ignore-files.ts'
import type { Io } from '../io.ts'

const SETTING_NAME = /\.ya?ml$/i
const HIDDEN_SETTINGS: ReadonlySet<string> = new Set([...CONFIG_NAMES, ...IGNORE_FILES])

/** Stories, and files that may hold settings. A folder is let through, unless it is hidden or holds packages. */
function isWatched(path: string, isFile: boolean | undefined): boolean {
  const name = basename(path)
  if (HIDDEN_SETTINGS.has(name)) return true
  if (name.startsWith('.') || name === 'node_modules') return false
  return isFile !== true || STORY_NAME.test(name) || SETTING_NAME.test(name)
}

export interface FileWatch {
  /** Absolute paths of files to watch as well. */
  add(paths: readonly string[]): void
  close(): Promise<void>
}

/** `changed` gets the absolute path of a file that was made, changed or removed. */
export async function watchFiles(
  given: readonly string[],
  io: Io,
  changed: (path: string) => void,
  failed: (error: unknown) => void,
): Promise<FileWatch> {
  const roots = new Set((given.length > 0 ? given : ['.']).map((argument) => toRoot(resolve(io.cwd, argument), io)))
  const watcher: FSWatcher = watch([...roots], {
    ignoreInitial: true,
    followSymlinks: false,
    ignored: (path, stats) => !roots.has(path) && !isWatched(path, stats && !stats.isDirectory()),
  })
  for (const event of ['add', 'change', 'unlink'] as const) watcher.on(event, (path) => changed(resolve(path)))
  watcher.on('error', failed)
  await new Promise<void>((done) => watcher.once('ready', () => done()))
  return { add: (paths) => void watcher.add([...paths]), close: () => watcher.close() }
}

/** The path, or the nearest folder above it that is there: for a pattern, the folder before its first mark. */
function toRoot(path: string, io: Io): string {
  return io.fs.existsSync(path) || dirname(path) === path ? path : toRoot(dirname(path), io)
}
