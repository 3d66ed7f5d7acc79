// Reader files: one file, or all of a folder, each with the sequence that it names, wherever the files lie.

import {
  isAbsolute,
  isSequencePath,
  joinPath,
  type TextFiles,
  toFolder,
  toMissing,
  toShownPath,
} from '../files/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { fail, type Problem, type Result, succeed } from '../problem/index.ts'
import type { Sequence } from '../sequence/types.ts'
import { loadReader } from './load.ts'
import type { Reader } from './types.ts'

interface FileReader {
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

export interface ReadReader extends FileReader {
  /** The file itself, or those of a group's members. */
  readonly files: readonly FileReader[]
}

export interface ReaderFileTools {
  readonly files: TextFiles
  phonicsFor(accent: Accent): Phonics
  /** By name or path; the path as `files` takes it. */
  sequence(name: string, accent: Accent | undefined): Promise<Result<Sequence>>
  /** The sequence of a file that names none: a config or a flag names it, and it counts from there. */
  readonly defaultSequence: string
  /** An accent that holds whatever the file says. */
  readonly accent?: Accent | undefined
  /** As `2026-09-14`: later lessons do not count. */
  readonly on: string
}

/** @param path a file, or a folder whose .yaml files are read */
export async function findReaderFiles(path: string, tools: ReaderFileTools): Promise<FoundReaders> {
  const files = await listFiles(path, tools)
  if (!files.ok) return { readers: [], problems: files.problems }
  const readers: FileReader[] = []
  const problems: Problem[] = []
  for (const file of files.value) {
    const found = await readReaderFile(file, tools)
    if (found.ok) readers.push(found.value)
    else problems.push(...found.problems)
  }
  return { readers, problems }
}

interface ReadWishes {
  /** Takes the place of what the file holds. */
  readonly text?: string | undefined
  /** A group may not stand in another. */
  readonly isMember?: boolean
}

export async function readReaderFile(
  file: string,
  tools: ReaderFileTools,
  { text, isMember = false }: ReadWishes = {},
): Promise<Result<ReadReader>> {
  const { files, defaultSequence, accent: asked, on, phonicsFor } = tools
  const read = text === undefined ? await files.read(file) : succeed(text)
  if (read === undefined) return fail(toMissing(file))
  if (!read.ok) return read
  const toName = (name: string): string => (name === defaultSequence ? name : toSequenceName(name, file))
  const members: FileReader[] = []
  const loaded = await loadReader(read.value, {
    path: file,
    phonicsFor,
    sequence: (name, accent) => tools.sequence(toName(name), asked ?? accent),
    defaultSequence,
    on,
    ...(!isMember && {
      async member(named) {
        const member = await readReaderFile(joinPath(toFolder(file), named), tools, { isMember: true })
        if (!member.ok) return member
        members.push(member.value)
        return succeed(member.value.reader)
      },
    }),
  })
  if (!loaded.ok) return loaded
  const { value: reader } = loaded
  // A group's sequence is named by its members' files, and counts from there.
  const sequenceName = members[0]?.sequenceName ?? toName(reader.sequenceName)
  const own = { path: file, reader, sequenceName }
  return succeed({ ...own, files: reader.members === undefined ? [own] : members })
}

function toSequenceName(name: string, file: string): string {
  return isSequencePath(name) && !isAbsolute(name) ? joinPath(toFolder(file), name) : name
}

async function listFiles(path: string, { files }: ReaderFileTools): Promise<Result<readonly string[]>> {
  const listed = await files.list(path)
  if (listed === undefined) {
    const there = await files.read(path)
    if (there !== undefined) return succeed([path])
    return fail({ code: 'missing-file', message: `There is no file or folder ${toShownPath(path)}` })
  }
  if (!listed.ok) return listed
  const names = listed.value.filter((name) => /\.ya?ml$/i.test(name)).sort()
  if (names.length > 0) return succeed(names.map((name) => joinPath(path, name)))
  const message = `There are no readers (files that end in .yaml) in ${toShownPath(path)}`
  return fail({ code: 'missing-file', message })
}
