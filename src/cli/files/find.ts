// Which stories are meant by the arguments of a command: files, folders, patterns and `-`.

import { basename, dirname, isAbsolute, join, relative, resolve, sep } from 'node:path'
import { STORY_NAME } from '../../files/index.ts'
import { findNearest } from '../../nearest.ts'
import { fail, type Problem, toExpected, toProblem } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem, toShownPath } from './file-problem.ts'
import type { IgnoreFiles } from './ignore-files.ts'
import { createIgnoreFiles } from './ignore-files.ts'
import { walk } from './walk.ts'

export interface StoryFile {
  /** As shown to people, with forward slashes; `-` for standard input. */
  readonly path: string
  /** The absolute path to read; `-` for standard input. */
  readonly file: string
}

export interface FoundStories {
  /** In the order of the arguments, and by path within one; each file once. */
  readonly files: readonly StoryFile[]
  /** One line for each file that was named and is left out. */
  readonly notices: readonly string[]
  /** Wrong arguments; the other arguments still count. */
  readonly problems: readonly Problem[]
}

export interface FindOptions {
  /** Whether .gitignore and .battledoreignore count. Default true. */
  readonly ignoreFiles?: boolean
}

interface Search {
  readonly io: Io
  readonly ignoreFiles: IgnoreFiles | undefined
}

interface Part {
  readonly files?: readonly StoryFile[]
  readonly notices?: readonly string[]
  readonly problems?: readonly Problem[]
}

/** No arguments mean the current folder. A path that exists is taken by name, whatever characters it has. */
export async function findStories(
  given: readonly string[],
  io: Io,
  { ignoreFiles = true }: FindOptions = {},
): Promise<FoundStories> {
  const search: Search = { io, ignoreFiles: ignoreFiles ? createIgnoreFiles(io) : undefined }
  const files = new Map<string, StoryFile>()
  const notices: string[] = []
  const problems: Problem[] = []
  for (const argument of given.length > 0 ? given : ['.']) {
    const part = await findPart(argument, search)
    for (const file of part.files ?? []) if (!files.has(file.file)) files.set(file.file, file)
    notices.push(...(part.notices ?? []))
    problems.push(...(part.problems ?? []))
  }
  return { files: [...files.values()], notices: [...new Set(notices)], problems }
}

async function findPart(argument: string, search: Search): Promise<Part> {
  if (argument === '-') return { files: [{ path: '-', file: '-' }] }
  if (argument === '')
    return fail({ code: 'bad-value', message: 'An empty path was given', note: 'Name a file or a folder.' })
  const file = resolve(search.io.cwd, argument)
  try {
    const status = search.io.fs.statSync(file, { throwIfNoEntry: false })
    if (status?.isDirectory()) return await findInFolder(argument, file, search)
    if (status) return await findNamed(argument, file, search)
  } catch (error) {
    return fail(toFileProblem(argument, error))
  }
  return isPattern(argument) ? findByPattern(argument, search) : fail(toMissing(argument, file, search.io))
}

async function findNamed(argument: string, file: string, { ignoreFiles }: Search): Promise<Part> {
  const path = toShown(argument)
  const reason = await ignoreFiles?.findReason(file)
  return reason ? { notices: [`${toShownPath(path)} ${reason}.`] } : { files: [{ path, file }] }
}

async function findInFolder(argument: string, folder: string, { io, ignoreFiles }: Search): Promise<Part> {
  const why = await ignoreFiles?.findFolderReason(folder)
  if (why) return { notices: [`${toShownPath(argument)} ${why}.`] }
  const { files, leftOut, problems } = await walk(folder, io, ignoreFiles)
  if (files.length === 0 && problems.length === 0) {
    const hint = leftOut > 0 ? `: ${leftOut === 1 ? 'one file is' : `${leftOut} files are`} left out` : ''
    const message = `There are no stories (files that end in .md) in ${toShownPath(argument)}${hint}`
    return fail({ code: 'missing-file', message })
  }
  const shown = files.map((file) => ({ path: toShown(join(argument, relative(folder, file))), file }))
  return { files: shown.sort(byPath), problems }
}

/** Loads the matcher of patterns only here: a shell has mostly done its work before. */
async function findByPattern(argument: string, { io, ignoreFiles }: Search): Promise<Part> {
  const { glob } = await import('tinyglobby')
  const options = { cwd: io.cwd, ignore: ['**/node_modules/**'], expandDirectories: false, absolute: true }
  const matches = (await glob(argument.replaceAll(sep, '/'), options)).filter((path) => STORY_NAME.test(path))
  const files: StoryFile[] = []
  for (const match of matches) {
    const file = resolve(match)
    if (!(await ignoreFiles?.findReason(file))) files.push({ path: toShownMatch(argument, file, io), file })
  }
  if (files.length > 0) return { files: files.sort(byPath) }
  const why = matches.length > 0 ? 'Every story is left out that matches' : 'No story matches'
  return fail({ code: 'missing-file', message: `${why} ${toShownPath(argument)}` })
}

function isPattern(argument: string): boolean {
  return /[*?[\]{}()!]/.test(argument)
}

function toMissing(argument: string, file: string, io: Io): Problem {
  if (io.fs.lstatSync(file, { throwIfNoEntry: false })?.isSymbolicLink()) {
    const target = toShownPath(io.fs.readlinkSync(file))
    const message = `${toShownPath(argument)} is a link to ${target}, which is not there`
    return toProblem({ code: 'missing-file', message })
  }
  const nearest = findNearest(basename(file), listNames(dirname(file), io))
  return toProblem({
    code: 'missing-file',
    message: `There is no file or folder ${toShownPath(argument)}`,
    expected: toExpected(nearest && toShown(join(dirname(argument), nearest))),
  })
}

function listNames(folder: string, io: Io): readonly string[] {
  try {
    return io.fs.readdirSync(folder)
  } catch {
    return []
  }
}

/** With forward slashes and without `./`. */
function toShown(path: string): string {
  return join(path).replaceAll(sep, '/')
}

function toShownMatch(argument: string, file: string, io: Io): string {
  return toShown(isAbsolute(argument) ? file : relative(io.cwd, file))
}

function byPath(one: StoryFile, other: StoryFile): number {
  return one.path < other.path ? -1 : one.path > other.path ? 1 : 0
}
