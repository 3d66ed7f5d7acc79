// Reader files from the disk: one file, or all of a folder.

import { dirname, isAbsolute, join, resolve } from 'node:path'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import type { Accent } from '../phonics/types.ts'
import { fail, type Problem, type Result, succeed } from '../problem/index.ts'
import { loadReader, type Reader } from '../readers/index.ts'
import type { Resources } from '../resources/types.ts'
import { toFileProblem, toShownPath } from './files/file-problem.ts'
import { readTextFile } from './files/read.ts'
import type { Io } from './io.ts'
import { isSequencePath } from './resources.ts'

export interface FileReader {
  /** As shown to people. */
  readonly path: string
  readonly reader: Reader
  /** The name of its sequence; a path in the file counts from the file. */
  readonly sequenceName: string
}

export interface FoundReaders {
  /** In order of their file names. */
  readonly readers: readonly FileReader[]
  /** The other readers still count. */
  readonly problems: readonly Problem[]
}

/** What holds where a reader's file does not say, and an accent that holds whatever it says. */
export interface ReaderDefaults {
  readonly defaultSequence?: string
  readonly accent?: Accent | undefined
}

/** @param path a file, or a folder whose .yaml files are read */
export async function findReaders(
  path: string,
  io: Io,
  resources: Resources,
  { defaultSequence = DEFAULT_SEQUENCE, accent: asked }: ReaderDefaults = {},
): Promise<FoundReaders> {
  const files = listFiles(path, io)
  if (!files.ok) return { readers: [], problems: files.problems }
  const readers: FileReader[] = []
  const problems: Problem[] = []
  for (const file of files.value) {
    const text = readTextFile(resolve(io.cwd, file), io, file)
    if (!text.ok) {
      problems.push(...text.problems)
      continue
    }
    // The default is named by a config or a flag, and counts from there.
    const toName = (name: string): string => (name === defaultSequence ? name : toSequenceName(name, file))
    const loaded = await loadReader(text.value, {
      path: file,
      phonicsFor: resources.phonicsFor,
      sequence: (name, accent) => resources.sequence(toName(name), asked ?? accent),
      defaultSequence,
    })
    if (loaded.ok) readers.push({ path: file, reader: loaded.value, sequenceName: toName(loaded.value.sequenceName) })
    else problems.push(...loaded.problems)
  }
  return { readers, problems }
}

function toSequenceName(name: string, file: string): string {
  return isSequencePath(name) && !isAbsolute(name) ? join(dirname(file), name) : name
}

function listFiles(path: string, io: Io): Result<readonly string[]> {
  const full = resolve(io.cwd, path)
  try {
    const status = io.fs.statSync(full, { throwIfNoEntry: false })
    if (!status) return fail({ code: 'missing-file', message: `There is no file or folder ${toShownPath(path)}` })
    if (!status.isDirectory()) return succeed([path])
    const names = io.fs
      .readdirSync(full)
      .filter((name) => /\.ya?ml$/i.test(name))
      .sort()
    if (names.length === 0)
      return fail({
        code: 'missing-file',
        message: `There are no readers (files that end in .yaml) in ${toShownPath(path)}`,
      })
    return succeed(names.map((name) => join(path, name)))
  } catch (error) {
    return fail(toFileProblem(path, error))
  }
}
