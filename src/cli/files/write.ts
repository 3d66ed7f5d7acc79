// Writes a file whole or not at all: a temporary file beside it, then a rename over it. A file that is write-protected stays.

import { basename, dirname, join } from 'node:path'
import { fail, type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem, toShownPath } from './file-problem.ts'

type Text = string | Uint8Array

/**
 * Keeps the file's permissions, and writes what a link leads to rather than the link. A long text may come in pieces.
 * `shown` is for messages.
 */
export function writeTextFile(
  path: string,
  text: Text | Iterable<Text>,
  io: Io,
  shown: string = path,
): Result<undefined> {
  let temporary: string | undefined
  try {
    if (isDevice(path, io)) {
      const device = io.fs.openSync(path, 'w')
      writeAll(device, text, io)
      return succeed(undefined)
    }
    const target = toTarget(path, io)
    const mode = findMode(target, io)
    temporary = toTemporary(target)
    writeThrough(temporary, text, mode, io)
    io.fs.renameSync(temporary, target)
    return succeed(undefined)
  } catch (error) {
    if (temporary !== undefined) io.fs.rmSync(temporary, { force: true })
    return fail(toWriteProblem(shown, error))
  }
}

/** Why a file could not be written, asked before anything is to be written; undefined where it could. */
export function findWriteObstacle(path: string, io: Io, shown: string = path): Problem | undefined {
  try {
    if (isDevice(path, io)) return undefined
    const target = toTarget(path, io)
    findMode(target, io)
    const temporary = toTemporary(target)
    io.fs.closeSync(io.fs.openSync(temporary, 'wx'))
    io.fs.rmSync(temporary, { force: true })
    return undefined
  } catch (error) {
    return toWriteProblem(shown, error)
  }
}

const PROTECTED = 'EPROTECTED'

function toWriteProblem(shown: string, error: unknown): Problem {
  const { code, path } = error instanceof Error ? (error as NodeJS.ErrnoException) : {}
  if (code === PROTECTED) return toProtected(`${toShownPath(shown)} is write-protected: allow changes to it first`)
  if (code !== 'EACCES' && code !== 'EPERM') return toFileProblem(shown, error)
  const where = path?.endsWith('.tmp') ? ' to write in its folder' : ''
  return toProtected(`${toShownPath(shown)} may not be written: permission${where} is missing`)
}

const toProtected = (message: string): Problem => toProblem({ code: 'unreadable-file', message })

const toTemporary = (target: string): string =>
  join(dirname(target), `.${basename(target).slice(0, 200)}.${crypto.randomUUID().slice(0, 8)}.tmp`)

/**
 * Undefined for a file that is not there. Throws for one that may not be changed, since a rename asks only the folder.
 * The mark is looked at too: an administrator's programs may write over it, but whoever set it wants the file kept.
 */
function findMode(target: string, io: Io): number | undefined {
  const mode = io.fs.statSync(target, { throwIfNoEntry: false })?.mode
  if (mode === undefined) return undefined
  if ((mode & 0o222) === 0) throw Object.assign(new Error('write-protected'), { code: PROTECTED })
  io.fs.closeSync(io.fs.openSync(target, 'r+'))
  return mode & 0o7777
}

/** `/dev/stdout`, `/dev/null` or a pipe: a rename would put a file in its place. */
function isDevice(path: string, io: Io): boolean {
  const status = io.fs.statSync(path, { throwIfNoEntry: false })
  return status !== undefined && !status.isFile() && !status.isDirectory()
}

/** Where a link leads, even when nothing is there yet. */
function toTarget(path: string, io: Io): string {
  if (io.fs.existsSync(path)) {
    const target = io.fs.realpathSync(path)
    // A rename would fail later, after a temporary file was written.
    if (io.fs.statSync(target).isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' })
    return target
  }
  const link = io.fs.lstatSync(path, { throwIfNoEntry: false })
  return link?.isSymbolicLink() ? join(dirname(path), io.fs.readlinkSync(path)) : path
}

/** On the disk before the rename, so that a power cut leaves the old file or the new one. */
function writeThrough(path: string, text: Text | Iterable<Text>, mode: number | undefined, io: Io): void {
  const file = io.fs.openSync(path, 'wx', mode ?? 0o666)
  writeAll(file, text, io, () => io.fs.fsyncSync(file))
  // The mode of `openSync` is cut by the user's mask.
  if (mode !== undefined) io.fs.chmodSync(path, mode)
}

function writeAll(file: number, text: Text | Iterable<Text>, { fs }: Io, last = (): void => undefined): void {
  const pieces = typeof text === 'string' || text instanceof Uint8Array ? [text] : text
  try {
    for (const piece of pieces) fs.writeFileSync(file, piece)
    last()
  } finally {
    fs.closeSync(file)
  }
}
