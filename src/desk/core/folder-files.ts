// The files of the folder as the worker knows them: each asked for once, until the page says that it has changed.

import { fail, type Result, succeed } from '../../problem/index.ts'
import type { DeskFiles } from './questions/data.ts'

export interface FolderFiles {
  /** In order. */
  list(): Promise<readonly string[]>
  /** Undefined where there is none. A byte order mark stays in the text. */
  text(path: string): Promise<Result<string> | undefined>
  bytes(path: string): Promise<Result<Uint8Array> | undefined>
  /** Without paths, everything. */
  forget(paths?: readonly string[]): void
}

export function createFolderFiles(files: DeskFiles): FolderFiles {
  let listed: Promise<ReadonlySet<string>> | undefined
  const texts = new Map<string, Promise<Result<string> | undefined>>()
  const list = (): Promise<ReadonlySet<string>> =>
    (listed ??= files.list().then(
      (paths) => new Set([...paths].sort()),
      () => new Set(),
    ))
  // Most files that are asked for are configs that no folder has: the list tells, and nothing need be fetched.
  const bytes = async (path: string): Promise<Result<Uint8Array> | undefined> => {
    if (!(await list()).has(path)) return undefined
    try {
      const found = await files.read(path)
      return found && succeed(found)
    } catch (error) {
      return fail({ code: 'unreadable-file', message: `${path} cannot be read: ${toReason(error)}` })
    }
  }
  const readText = async (path: string): Promise<Result<string> | undefined> => {
    const found = await bytes(path)
    return found?.ok ? decode(found.value, path) : found
  }
  return {
    list: async () => [...(await list())],
    bytes,
    text(path) {
      const known = texts.get(path) ?? readText(path)
      texts.set(path, known)
      return known
    },
    forget(paths) {
      listed = undefined
      if (paths === undefined) texts.clear()
      else for (const path of paths) texts.delete(path)
    },
  }
}

const toReason = (error: unknown): string => (error instanceof Error ? error.message : String(error))

function decode(bytes: Uint8Array, path: string): Result<string> {
  const note = 'Save it as UTF-8 and try again.'
  if (bytes.includes(0))
    return fail({ code: 'binary', message: `${path} is not a text: it holds bytes that no text has` })
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes))
  } catch {
    return fail({ code: 'binary', message: `${path} is not UTF-8`, note })
  }
}
