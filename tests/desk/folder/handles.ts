// Folders of a browser in memory, as far as a picked folder asks for them.

import type { FileHandle, FolderHandle } from '../../../src/desk/folder/picked.ts'

type Tree = Map<string, Uint8Array | Tree>

export interface TestFolder {
  readonly handle: FolderHandle
  readonly tree: Tree
  /** What every call ends with from now on; undefined for nothing. */
  fail(name: string | undefined): void
}

const toError = (name: string): Error => Object.assign(new Error(name), { name })

export function createTestFolder(files: Readonly<Record<string, string>>): TestFolder {
  const tree: Tree = new Map()
  for (const [path, text] of Object.entries(files)) {
    const parts = path.split('/')
    const last = parts.pop() ?? ''
    let at = tree
    for (const part of parts) {
      const next = at.get(part)
      const below: Tree = next instanceof Map ? next : new Map()
      at.set(part, below)
      at = below
    }
    at.set(last, new TextEncoder().encode(text))
  }
  let failing: string | undefined
  const check = (): void => {
    if (failing !== undefined) throw toError(failing)
  }
  const toFile = (name: string, folder: Tree): FileHandle => ({
    ...{ kind: 'file', name },
    async getFile() {
      check()
      const bytes = folder.get(name)
      if (!(bytes instanceof Uint8Array)) throw toError('NotFoundError')
      return { size: bytes.length, arrayBuffer: async () => bytes.slice().buffer as ArrayBuffer }
    },
    async createWritable() {
      check()
      let written = new Uint8Array()
      return {
        async write(bytes) {
          check()
          written = bytes.slice()
        },
        async close() {
          folder.set(name, written)
        },
        async abort() {},
      }
    },
  })
  const toFolder = (name: string, folder: Tree): FolderHandle => ({
    ...{ kind: 'directory', name },
    async *values() {
      check()
      for (const [own, entry] of folder) yield entry instanceof Map ? toFolder(own, entry) : toFile(own, folder)
    },
    async getFileHandle(own, { create } = { create: false }) {
      check()
      const entry = folder.get(own)
      if (entry instanceof Map) throw toError('TypeMismatchError')
      if (entry === undefined && !create) throw toError('NotFoundError')
      if (entry === undefined) folder.set(own, new Uint8Array())
      return toFile(own, folder)
    },
    async getDirectoryHandle(own, { create } = { create: false }) {
      check()
      const entry = folder.get(own)
      if (entry instanceof Uint8Array) throw toError('TypeMismatchError')
      if (entry === undefined && !create) throw toError('NotFoundError')
      const below: Tree = entry ?? new Map()
      folder.set(own, below)
      return toFolder(own, below)
    },
    isSameEntry: async () => true,
    queryPermission: async () => 'granted',
    requestPermission: async () => 'granted',
  })
  return {
    ...{ tree, handle: toFolder('Tansy Lane', tree) },
    fail(name) {
      failing = name
    },
  }
}
