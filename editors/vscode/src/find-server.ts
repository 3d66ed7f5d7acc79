// Which server to start.

import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'

export interface ServerPlaces {
  /** The path that a person has set; empty for none. */
  readonly setting: string
  /** The opened folders. */
  readonly folders: readonly string[]
  /** Whether programs of the opened folders may be run. */
  readonly isTrusted: boolean
  /** The server that comes with the extension. */
  readonly own: string
}

/** A folder's own server checks as its npm scripts and its commits do, so it comes before ours. */
export function findServer({ setting, folders, isTrusted, own }: ServerPlaces, exists = existsSync): string {
  if (!isTrusted) return own
  if (setting !== '') return resolve(folders[0] ?? '.', setting)
  const paths = folders.map((folder) => join(folder, 'node_modules', 'battledore', 'dist', 'cli.cjs'))
  return paths.find((path) => exists(path)) ?? own
}
