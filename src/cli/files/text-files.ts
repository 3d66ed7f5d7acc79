// The disk as the core asks for texts.

import { resolve } from 'node:path'
import type { TextFiles } from '../../files/index.ts'
import { succeed } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem } from './file-problem.ts'
import { readTextFile } from './read.ts'
import { toShown } from './shown.ts'

/** Paths count from the current folder. */
export function createTextFiles(io: Io): TextFiles {
  const show = (path: string): string => toShown(path, io)
  return {
    show,
    async read(path) {
      const full = resolve(io.cwd, path)
      return io.fs.existsSync(full) ? readTextFile(full, io, show(path)) : undefined
    },
    async list(folder) {
      try {
        const full = resolve(io.cwd, folder)
        const isFolder = io.fs.statSync(full, { throwIfNoEntry: false })?.isDirectory() === true
        return isFolder ? succeed(io.fs.readdirSync(full)) : undefined
      } catch (error) {
        return { ok: false, problems: [toFileProblem(show(folder), error)] }
      }
    },
  }
}
