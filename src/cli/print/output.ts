// Writes what was drawn: under a name that says what it is, and never over a file that is somebody's own.

import { resolve } from 'node:path'
import { PRODUCER } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { toShownPath } from '../files/file-problem.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'

export interface Written {
  /** As shown to people. */
  readonly path: string
  readonly bytes: Uint8Array
}

/** All of them or none: nothing is written where one must stay as it is. */
export function writeAll(files: readonly Written[], isForced: boolean, io: Io): Result<undefined> {
  const foreign = isForced ? undefined : files.find(({ path }) => isForeign(resolve(io.cwd, path), io))
  if (foreign)
    return fail({
      code: 'foreign-file',
      message: `${toShownPath(foreign.path)} is there already, and this program has not made it`,
      note: 'Name another file with --out, or write over it with --force.',
    })
  for (const { path, bytes } of files) {
    const result = writeTextFile(resolve(io.cwd, path), bytes, io, path)
    if (!result.ok) return result
  }
  return succeed(undefined)
}

/** A file that does not name us as its maker. */
function isForeign(file: string, io: Io): boolean {
  const status = io.fs.statSync(file, { throwIfNoEntry: false })
  if (!status?.isFile() || status.size === 0) return false
  const text = new TextDecoder('latin1').decode(io.fs.readFileSync(file))
  return !isOurPdf(text) && !text.includes(`data-producer="${PRODUCER}"`)
}

/** The facts of a PDF name the producer by the number of an object, which holds its name. */
function isOurPdf(text: string): boolean {
  const number = /\/Producer (\d+) 0 R/.exec(text)?.[1]
  return number !== undefined && new RegExp(`(?:^|\\n)${number} 0 obj\\s*\\(${PRODUCER}\\)`).test(text)
}
