// Reader files from the disk: one file, or all of a folder.

import { dirname, isAbsolute, join, resolve } from 'node:path'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import type { Accent } from '../phonics/types.ts'
import { fail, type Problem, type Result, succeed } from '../problem/index.ts'
import { loadReader, type Reader } from '../readers/index.ts'
import type { Resources } from '../resources/types.ts'
import { toFileProblem, toShownPath } from './files/file-problem.ts'
import { readTextFile } from './files/read.ts'
import { toSlashes } from './files/shown.ts'
import type { Io } from './io.ts'
import { isSequencePath } from './resources.ts'

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

/** What holds where a reader's file does not say, an accent that holds whatever it says, and the day that is asked for. */
export interface ReaderDefaults {
  readonly defaultSequence?: string
  readonly accent?: Accent | undefined
  /** As `2026-09-14`: later lessons do not count. Default: today. */
  readonly on?: string | undefined
}

/** @param path a file, or a folder whose .yaml files are read */
export async function findReaders(
  path: string,
  io: Io,
  resources: Resources,
  defaults: ReaderDefaults = {},
): Promise<FoundReaders> {
  const files = listFiles(path, io)
  if (!files.ok) return { readers: [], problems: files.problems }
  const readers: FileReader[] = []
  const problems: Problem[] = []
  for (const file of files.value) {
    const found = await readReaderFile(file, io, resources, defaults)
    if (found.ok) readers.push(found.value)
    else problems.push(...found.problems)
  }
  return { readers, problems }
}

export interface ReadReader extends FileReader {
  /** The file itself, or those of a group's members. */
  readonly files: readonly FileReader[]
}

interface ReadWishes extends ReaderDefaults {
  /** Takes the place of what the file holds. */
  readonly text?: string
  /** A group may not stand in another. */
  readonly isMember?: boolean
}

export async function readReaderFile(
  file: string,
  io: Io,
  resources: Resources,
  wishes: ReadWishes = {},
): Promise<Result<ReadReader>> {
  const { defaultSequence = DEFAULT_SEQUENCE, accent: asked, on, text, isMember } = wishes
  const read = text === undefined ? readTextFile(resolve(io.cwd, file), io, file) : succeed(text)
  if (!read.ok) return read
  // The default is named by a config or a flag, and counts from there.
  const toName = (name: string): string => (name === defaultSequence ? name : toSequenceName(name, file))
  const members: FileReader[] = []
  const loaded = await loadReader(read.value, {
    path: file,
    phonicsFor: resources.phonicsFor,
    sequence: (name, accent) => resources.sequence(toName(name), asked ?? accent),
    defaultSequence,
    on: on ?? io.today(),
    ...(isMember !== true && {
      async member(named) {
        const path = toSlashes(isAbsolute(named) ? named : join(dirname(file), named))
        const { text: _, ...others } = wishes
        const member = await readReaderFile(path, io, resources, { ...others, isMember: true })
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

/** A day as a person writes it, `2026-09-14`; today where none is given. */
export function toDay(given: string | undefined, io: Io): Result<string> {
  if (given === undefined) return succeed(io.today())
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(given.trim()) ?? []
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)))
  if (year !== undefined && date.getUTCMonth() === Number(month) - 1) return succeed(date.toISOString().slice(0, 10))
  return fail({ code: 'bad-value', message: `A day is written as 2026-09-14, year, month, day; this is \`${given}\`` })
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
