// Writes files that are new, all or none: a file that is there already is never written over.

import { dirname, resolve } from 'node:path'
import { type Problem, toProblem } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem, toShownPath } from './file-problem.ts'
import { writeTextFile } from './write.ts'

export interface NewFile {
  /** As shown to people, seen from the current folder. */
  readonly path: string
  readonly content: string | Uint8Array
}

/** What is in the way; then none of the files is left behind. Undefined where all was written. */
export function writeNewFiles(files: readonly NewFile[], io: Io): Problem | undefined {
  const made: string[] = []
  const undo = (problem: Problem): Problem => {
    for (const path of made) io.fs.rmSync(path, { force: true })
    return problem
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
      const there = { code: 'foreign-file', message: `${toShownPath(path)} is there already` } as const
      return undo(isThere ? toProblem(there) : toFileProblem(path, error))
    }
  }
  for (const { path, content } of files) {
    const written = writeTextFile(resolve(io.cwd, path), content, io, path)
    const [problem] = written.ok ? [] : written.problems
    if (problem) return undo(problem)
  }
  return undefined
}
