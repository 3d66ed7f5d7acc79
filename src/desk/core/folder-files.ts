// The files of the folder as the worker knows them: each asked for once, until the page says that it has changed.

import { decodeUtf8, isForAdults, STORY_NAME, type TextFiles } from '../../files/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { DeskFiles, Listed } from './questions/data.ts'

/** A byte order mark stays in a text. */
export interface FolderFiles extends TextFiles {
  /** All paths, in order. */
  all(): Promise<readonly string[]>
  /** Those of the shelf, in order. */
  stories(): Promise<readonly string[]>
  bytes(path: string): Promise<Result<Uint8Array> | undefined>
  /** Without paths, everything. */
  forget(paths?: readonly string[]): void
}

interface Names {
  readonly all: ReadonlySet<string>
  readonly stories: readonly string[]
}

const toNames = ({ list, stories }: Listed): Names => ({
  all: new Set([...list].sort()),
  stories: [...(stories ?? list.filter(isStory))].sort(),
})

const isStory = (path: string): boolean => STORY_NAME.test(path) && !isForAdults(path.split('/').at(-1) ?? '')

export function createFolderFiles(files: DeskFiles): FolderFiles {
  let listed: Promise<Names> | undefined
  const texts = new Map<string, Promise<Result<string> | undefined>>()
  const names = (): Promise<Names> => (listed ??= files.list().then(toNames, () => toNames({ list: [] })))
  const all = async (): Promise<ReadonlySet<string>> => (await names()).all
  // Most files that are asked for are configs that no folder has: the list says so, and nothing need be fetched.
  const bytes = async (path: string): Promise<Result<Uint8Array> | undefined> => {
    if (!(await all()).has(path)) return undefined
    try {
      const found = await files.read(path)
      return found && succeed(found)
    } catch (error) {
      return fail({ code: 'unreadable-file', message: `${path} cannot be read: ${toReason(error)}` })
    }
  }
  const readText = async (path: string): Promise<Result<string> | undefined> => {
    const found = await bytes(path)
    return found?.ok ? decodeUtf8(found.value, path) : found
  }
  return {
    all: async () => [...(await all())],
    stories: async () => (await names()).stories,
    bytes,
    show: (path) => path,
    read(path) {
      const known = texts.get(path) ?? readText(path)
      texts.set(path, known)
      return known
    },
    async list(folder) {
      const prefix = folder === '' ? '' : `${folder}/`
      const below = [...(await all())].flatMap((path) => (path.startsWith(prefix) ? [path.slice(prefix.length)] : []))
      const names = new Set(below.map((path) => path.split('/')[0] ?? ''))
      return names.size > 0 ? succeed([...names]) : undefined
    },
    forget(paths) {
      listed = undefined
      if (paths === undefined) texts.clear()
      else for (const path of paths) texts.delete(path)
    },
  }
}

const toReason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
