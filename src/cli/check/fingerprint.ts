// Names the program and its data, so that results of another version are never taken for its own.

import { join } from 'node:path'
import { DATA_FOLDER } from '../../packaged/data.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'

/** Sizes and dates of what the program is made of: a package keeps its dates wherever it is installed, a build has new ones. */
export function toFingerprint({ fs }: Pick<Io, 'fs'>): string {
  const parts = [VERSION, ...listFiles(DATA_FOLDER, fs, /\.(?:cjs|bin|json)$/)]
  // From its sources the program has no version of its own.
  if (VERSION.endsWith('-source'))
    parts.push(
      ...['src', 'rules'].flatMap((name) => listFiles(join(DATA_FOLDER, '..', name), fs, /\.(?:ts|tsv|yaml)$/)),
    )
  return parts.join(' ')
}

function listFiles(folder: string, fs: Io['fs'], wanted: RegExp): string[] {
  return fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return listFiles(path, fs, wanted)
    if (!wanted.test(entry.name)) return []
    const { size, mtimeMs } = fs.statSync(path)
    return [`${entry.name}:${size}:${Math.round(mtimeMs)}`]
  })
}
