// All stories below a folder, without going into folders that are left out.

import { join } from 'node:path'
import { STORY_NAME } from '../../files/index.ts'
import type { Problem } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem } from './file-problem.ts'
import type { IgnoreFiles } from './ignore-files.ts'

export interface Walked {
  readonly files: readonly string[]
  /** How many stories were left out one by one. */
  readonly leftOut: number
  readonly problems: readonly Problem[]
}

/**
 * Absolute paths, in no order. `node_modules` and folders whose name starts with a dot are skipped, unless an ignore
 * file takes them in with `!`. Links to files are followed, links to folders are not: they can lead in circles.
 */
export async function walk(folder: string, io: Io, ignoreFiles: IgnoreFiles | undefined): Promise<Walked> {
  const files: string[] = []
  const problems: Problem[] = []
  let leftOut = 0
  const open = [folder]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const entry of list(next, io, problems)) {
      const path = join(next, entry.name)
      if (entry.isDirectory()) {
        if (await isOpen(path, entry.name, ignoreFiles)) open.push(path)
      } else if (STORY_NAME.test(entry.name) && (entry.isFile() || isLinkToFile(path, io))) {
        if (await ignoreFiles?.findReason(path)) leftOut++
        else files.push(path)
      }
    }
  }
  return { files, leftOut, problems }
}

function list(folder: string, io: Io, problems: Problem[]) {
  try {
    return io.fs.readdirSync(folder, { withFileTypes: true })
  } catch (error) {
    problems.push(toFileProblem(folder, error))
    return []
  }
}

/** Whether to go into a folder of that name. */
export async function isOpen(path: string, name: string, ignoreFiles: IgnoreFiles | undefined): Promise<boolean> {
  const decision = await ignoreFiles?.decide(path, true)
  return decision === undefined ? name !== 'node_modules' && !name.startsWith('.') : decision === 'taken in'
}

function isLinkToFile(path: string, io: Io): boolean {
  return io.fs.statSync(path, { throwIfNoEntry: false })?.isFile() === true
}
