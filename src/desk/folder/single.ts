// Files opened one by one, where a browser shows a page no folder: saving hands the file over as a download.

import { toSort } from '../../desk-server/names.ts'
import { fail, succeed, toProblem } from '../../problem/index.ts'
import { toVersion } from './hash.ts'
import type { FileBytes, Folder } from './types.ts'

export interface SingleFolder extends Folder {
  /** A file that the maker has opened. */
  add(name: string, bytes: Uint8Array): Promise<void>
}

/** The same at each opening: drafts go by the name of the file. */
export const SINGLE_ID = 'single'

export interface SingleTools {
  download(name: string, bytes: Uint8Array): void
  /** Files that are there from the beginning: settings in the page. */
  readonly given?: Readonly<Record<string, Uint8Array>>
  /** Names of stories of which there is a draft from an earlier opening. */
  readonly drafted?: readonly string[]
}

export async function createSingle({ download, given = {}, drafted = [] }: SingleTools): Promise<SingleFolder> {
  const files = new Map<string, FileBytes>()
  const listeners = new Set<(names: readonly string[]) => void>()
  const tell = (name: string): void => {
    for (const listener of [...listeners]) listener([name])
  }
  const put = async (name: string, bytes: Uint8Array): Promise<string> => {
    const version = await toVersion(bytes)
    files.set(name, { name, bytes, version })
    return version
  }
  for (const [name, bytes] of Object.entries(given)) await put(name, bytes)
  return {
    ...{ kind: 'single', id: SINGLE_ID, label: 'opened files' },
    async add(name, bytes) {
      await put(name, bytes)
      tell(name)
    },
    async list() {
      const names = [...new Set([...files.keys(), ...drafted])].sort()
      return succeed(
        names.flatMap((name) => {
          const sort = toSort(name)
          return sort ? [{ name, sort, size: files.get(name)?.bytes.length ?? 0 }] : []
        }),
      )
    },
    async read(name) {
      const file = files.get(name)
      // A copy: whoever reads may hand the bytes on to a worker, and then they are gone here.
      return file
        ? succeed({ ...file, bytes: file.bytes.slice() })
        : fail({ code: 'missing-file', message: `\`${name}\` is not opened` })
    },
    async save(name, bytes, base) {
      const theirs = files.get(name)
      if ((theirs?.version ?? 'new') !== base) return { kind: 'changed', theirs }
      try {
        download(name.split('/').at(-1) ?? name, bytes)
      } catch {
        const message = `\`${name}\` could not be handed over as a download`
        return { kind: 'refused', problem: toProblem({ code: 'unreadable-file', message }) }
      }
      const version = await put(name, bytes)
      tell(name)
      return { kind: 'saved', version }
    },
    watch(onChange) {
      listeners.add(onChange)
      return () => listeners.delete(onChange)
    },
  }
}
