// Reader files from the disk: one file, or all of a folder.

import { dirname, isAbsolute, join, resolve } from 'node:path'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import { loadReader, type Reader } from '../readers/index.ts'
import type { Resources } from '../resources/types.ts'
import { toFileMessage, toShownPath } from './files/file-message.ts'
import { readTextFile } from './files/read.ts'
import type { Io } from './io.ts'
import { isSequencePath, toSequenceProblemLine } from './resources.ts'

export interface FileReader {
  /** As shown to people. */
  readonly path: string
  readonly reader: Reader
}

export interface FoundReaders {
  /** In order of their file names. */
  readonly readers: readonly FileReader[]
  /** One line each; the other readers still count. */
  readonly problems: readonly string[]
}

/** @param path a file, or a folder whose .yaml files are read */
export async function findReaders(path: string, io: Io, resources: Resources): Promise<FoundReaders> {
  const files = listFiles(path, io)
  if ('problem' in files) return { readers: [], problems: [files.problem] }
  const readers: FileReader[] = []
  const problems: string[] = []
  for (const file of files.paths) {
    const text = readTextFile(resolve(io.cwd, file), io, file)
    if (!text.ok) {
      problems.push(text.message)
      continue
    }
    const loaded = await loadReader(text.text, {
      phonicsFor: resources.phonicsFor,
      sequence: (name, accent) => resources.sequence(toSequenceName(name, file), accent),
      defaultSequence: DEFAULT_SEQUENCE,
    })
    if (loaded.reader !== undefined) readers.push({ path: file, reader: loaded.reader })
    problems.push(...loaded.problems.map((problem) => toSequenceProblemLine(file, problem)))
  }
  return { readers, problems }
}

/** A path in a reader file counts from that file. */
export function toSequenceName(name: string, file: string): string {
  return isSequencePath(name) && !isAbsolute(name) ? join(dirname(file), name) : name
}

function listFiles(path: string, io: Io): { readonly paths: readonly string[] } | { readonly problem: string } {
  const full = resolve(io.cwd, path)
  try {
    const status = io.fs.statSync(full, { throwIfNoEntry: false })
    if (!status) return { problem: `There is no file or folder ${toShownPath(path)}.` }
    if (!status.isDirectory()) return { paths: [path] }
    const names = io.fs
      .readdirSync(full)
      .filter((name) => /\.ya?ml$/i.test(name))
      .sort()
    if (names.length === 0)
      return { problem: `There are no readers (files that end in .yaml) in ${toShownPath(path)}.` }
    return { paths: names.map((name) => join(path, name)) }
  } catch (error) {
    return { problem: toFileMessage(path, error) }
  }
}
