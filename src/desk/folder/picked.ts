// A folder that the maker has picked in the browser: read and written straight, with the permission that she gives.

import { toSort } from '../../desk-server/names.ts'
import { fail, type Problem, succeed, toProblem } from '../../problem/index.ts'
import { toVersion } from './hash.ts'
import type { FileBytes, FileEntry, Folder, Saved } from './types.ts'

/** What of the browser's handles is used here; their types are not in every browser's list yet. */
export interface FileHandle {
  readonly kind: 'file'
  readonly name: string
  getFile(): Promise<{ readonly size: number; arrayBuffer(): Promise<ArrayBuffer> }>
  createWritable(): Promise<{ write(bytes: Uint8Array): Promise<void>; close(): Promise<void>; abort(): Promise<void> }>
}

export interface FolderHandle {
  readonly kind: 'directory'
  readonly name: string
  values(): AsyncIterable<FileHandle | FolderHandle>
  getFileHandle(name: string, options?: { readonly create: boolean }): Promise<FileHandle>
  getDirectoryHandle(name: string, options?: { readonly create: boolean }): Promise<FolderHandle>
  isSameEntry(other: FolderHandle): Promise<boolean>
  queryPermission(options: { readonly mode: 'readwrite' }): Promise<PermissionState>
  requestPermission(options: { readonly mode: 'readwrite' }): Promise<PermissionState>
}

/** @param onFocus runs when the maker comes back to the page: what other programs did meanwhile is not told to it */
export function openPicked(root: FolderHandle, id: string, onFocus: (run: () => void) => () => void): Folder {
  const find = async (name: string, create: boolean): Promise<FileHandle> => {
    const parts = name.split('/')
    const last = parts.pop() ?? ''
    let folder = root
    for (const part of parts) folder = await folder.getDirectoryHandle(part, { create })
    return folder.getFileHandle(last, { create })
  }
  async function read(name: string): Promise<FileBytes | 'missing'> {
    try {
      if (toSort(name) === undefined) return 'missing'
      const file = await (await find(name, false)).getFile()
      const bytes = new Uint8Array(await file.arrayBuffer())
      return { name, bytes, version: await toVersion(bytes) }
    } catch (error) {
      // The folder itself may be what is gone.
      if (isNamed(error, 'NotFoundError', 'TypeMismatchError') && (await isThere(root))) return 'missing'
      throw error
    }
  }
  return {
    ...{ kind: 'picked', id, label: root.name },
    async list() {
      try {
        const files = await walk(root, '')
        return succeed(files.sort((one, other) => (one.name < other.name ? -1 : 1)))
      } catch (error) {
        return fail(toLost(root, error))
      }
    },
    async read(name) {
      try {
        const file = await read(name)
        if (file !== 'missing') return succeed(file)
        return fail({ code: 'missing-file', message: `\`${name}\` is not there` })
      } catch (error) {
        return fail(toLost(root, error))
      }
    },
    async save(name, bytes, base): Promise<Saved> {
      try {
        if (toSort(name, true) === undefined) return { kind: 'refused', problem: toOutside(name) }
        const there = await read(name)
        const theirs = there === 'missing' ? undefined : there
        if ((theirs?.version ?? 'new') !== base) return { kind: 'changed', theirs }
        await write(await find(name, true), bytes)
        return { kind: 'saved', version: await toVersion(bytes) }
      } catch (error) {
        const problem = toLost(root, error)
        return problem.code === 'folder-lost' ? { kind: 'lost', problem } : { kind: 'refused', problem }
      }
    },
    watch: (onChange) => onFocus(() => onChange(undefined)),
  }
}

/** The browser writes beside the file and puts it in its place when it is closed. */
async function write(file: FileHandle, bytes: Uint8Array): Promise<void> {
  const stream = await file.createWritable()
  try {
    await stream.write(bytes)
  } catch (error) {
    await stream.abort().catch(() => undefined)
    throw error
  }
  await stream.close()
}

async function walk(folder: FolderHandle, prefix: string): Promise<FileEntry[]> {
  const files: FileEntry[] = []
  for await (const entry of folder.values()) {
    const name = prefix + entry.name
    if (entry.kind === 'file') {
      const sort = toSort(name)
      if (sort) files.push({ name, sort, size: (await entry.getFile()).size })
    } else if (!entry.name.startsWith('.') && entry.name !== 'node_modules')
      files.push(...(await walk(entry, `${name}/`)))
  }
  return files
}

async function isThere(root: FolderHandle): Promise<boolean> {
  try {
    for await (const _ of root.values()) break
    return true
  } catch {
    return false
  }
}

const isNamed = (error: unknown, ...names: readonly string[]): boolean =>
  error instanceof Error && names.includes(error.name)

const toOutside = (name: string): Problem =>
  toProblem({ code: 'outside-folder', message: `\`${name}\` may not be written here` })

function toLost({ name }: FolderHandle, error: unknown): Problem {
  if (isNamed(error, 'QuotaExceededError'))
    return toProblem({ code: 'unreadable-file', message: 'The disk is full: nothing was written' })
  if (isNamed(error, 'NotAllowedError', 'SecurityError'))
    return toProblem({
      code: 'folder-lost',
      message: `The browser no longer lets this page into the folder \`${name}\`. Your text is still here`,
      note: 'Open this page again and allow the folder once more.',
    })
  if (isNamed(error, 'NoModificationAllowedError', 'InvalidModificationError'))
    return toProblem({ code: 'unreadable-file', message: 'The file may not be written: another program holds it' })
  return toProblem({
    code: 'folder-lost',
    message: `The folder \`${name}\` cannot be reached. Your text is still here`,
  })
}
