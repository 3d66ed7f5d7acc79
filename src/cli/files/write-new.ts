// Writes files that are new, all or none: a file that is there already is never written over.

import { dirname, resolve } from 'node:path'
import type { Io } from '../io.ts'
import { toFileMessage, toShownPath } from './file-message.ts'
import { writeTextFile } from './write.ts'

export interface NewFile {
  /** As shown to people, seen from the current folder. */
  readonly path: string
  readonly content: string | Uint8Array
}

/** What is in the way, as a sentence; then none of the files is left behind. Undefined where all was written. */
export function writeNewFiles(files: readonly NewFile[], io: Io): string | undefined {
  const made: string[] = []
  const undo = (message: string): string => {
    for (const path of made) io.fs.rmSync(path, { force: true })
    return message
  }
  for (const { path } of files) {
    const full = resolve(io.cwd, path)
    try {
      io.fs.mkdirSync(dirname(full), { recursive: true })
      // Takes the name, so that no other program can get it between the look and the writing.
      io.fs.closeSync(io.fs.openSync(full, 'wx'))
      made.push(full)
    } catch (error) {
      const isThere = (error as NodeJS.ErrnoException).code === 'EEXIST'
      return undo(isThere ? `${toShownPath(path)} is there already.` : toFileMessage(path, error))
    }
  }
  for (const { path, content } of files) {
    const written = writeTextFile(resolve(io.cwd, path), content, io, path)
    if (!written.ok) return undo(written.message)
  }
  return undefined
}
