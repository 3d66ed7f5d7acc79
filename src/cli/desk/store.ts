// The folder on the disk as the desk's server asks for it: nothing outside of it is read or written, whatever links say.

import { createHash } from 'node:crypto'
import { basename, dirname, join, relative, sep } from 'node:path'
import { type ListedFile, type Store, type StoredFile, toSort } from '../../desk-server/index.ts'
import { type Result, succeed } from '../../problem/index.ts'
import { createIgnoreFiles, type IgnoreFiles } from '../files/ignore-files.ts'
import { readBytes } from '../files/read.ts'
import { toSlashes } from '../files/shown.ts'
import { isOpen } from '../files/walk.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
import { writeNewFiles } from '../files/write-new.ts'
import type { Io } from '../io.ts'

const toHash = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex')

/** @param folder the real path of a folder */
export function createStore(folder: string, io: Io): Store {
  /** The full path of a name, if it lies in the folder really; so does the nearest folder of one that is not there yet. */
  function findInside(name: string): string | undefined {
    const full = join(folder, ...name.split('/'))
    for (let path = full; ; path = dirname(path)) {
      if (io.fs.lstatSync(path, { throwIfNoEntry: false }) === undefined) continue
      const real = toReal(path, io)
      return real !== undefined && isBelow(real, folder) ? full : undefined
    }
  }
  function read(name: string): Result<StoredFile> | undefined {
    const full = findInside(name)
    if (full === undefined || !isFile(full, io)) return undefined
    const found = readBytes(full, io, name)
    if (!found.ok) return found
    const locked = findWriteObstacle(full, io, name)
    return succeed({ bytes: found.value, version: `sha256-${toHash(found.value)}`, ...(locked && { locked }) })
  }
  return {
    id: toHash(folder),
    label: basename(folder) || folder,
    read,
    async list() {
      const files: ListedFile[] = []
      const ignoreFiles = createIgnoreFiles(io)
      const found: string[] = []
      await walk(folder, io, ignoreFiles, (full) => found.push(full))
      for (const full of found) {
        const name = toSlashes(relative(folder, full))
        const sort = toSort(name)
        const size = sort && findInside(name) && io.fs.statSync(full, { throwIfNoEntry: false })?.size
        if (sort === undefined || size === undefined) continue
        const isLeftOut = sort === 'story' && { isLeftOut: (await ignoreFiles.findReason(full)) !== undefined }
        files.push({ name, sort, size: Number(size), ...isLeftOut })
      }
      return succeed(files.sort((one, other) => (one.name < other.name ? -1 : 1)))
    },
    save(name, bytes, base) {
      const full = findInside(name)
      if (full === undefined) return undefined
      const there = read(name)
      if (there?.ok === false) return { kind: 'refused', problem: toFirst(there.problems) }
      const theirs = there?.value
      if (theirs?.version !== base) return { kind: 'changed', theirs }
      if (base === undefined) {
        const shown = toSlashes(relative(io.cwd, full))
        const problem = writeNewFiles([{ path: shown, content: bytes }], io)
        if (problem) return { kind: 'refused', problem }
      } else {
        const written = writeTextFile(full, bytes, io, name)
        if (!written.ok) return { kind: 'refused', problem: toFirst(written.problems) }
      }
      return { kind: 'saved', version: `sha256-${toHash(bytes)}` }
    },
  }
}

const toFirst = <Item>(items: readonly Item[]): Item => items[0] as Item

const isFile = (path: string, io: Io): boolean => io.fs.statSync(path, { throwIfNoEntry: false })?.isFile() === true

const isBelow = (path: string, folder: string): boolean =>
  path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep)

/** Undefined for a link that leads nowhere: what would be made there, might be made outside. */
function toReal(path: string, io: Io): string | undefined {
  try {
    return io.fs.realpathSync(path)
  } catch {
    return undefined
  }
}

/** All files below, links to files among them; folders that are hidden or left out are not gone into, nor are links to folders. */
async function walk(folder: string, io: Io, ignoreFiles: IgnoreFiles, take: (path: string) => void): Promise<void> {
  const open = [folder]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const entry of list(next, io)) {
      const path = join(next, entry.name)
      if (!entry.isDirectory()) take(path)
      else if (await isOpen(path, entry.name, ignoreFiles)) open.push(path)
    }
  }
}

function list(folder: string, io: Io) {
  try {
    return io.fs.readdirSync(folder, { withFileTypes: true })
  } catch {
    // One folder that may not be opened hides no other.
    return []
  }
}
