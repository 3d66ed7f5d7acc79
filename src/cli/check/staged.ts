// The stories that are staged for the next commit, with their staged text.

import { join, relative, resolve, sep } from 'node:path'
import { decodeUtf8, STORY_NAME } from '../../files/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { askGit, type GitAnswer } from '../files/git.ts'
import { createIgnoreFiles, type IgnoreFiles } from '../files/ignore-files.ts'
import { isOpen } from '../files/walk.ts'
import type { Io } from '../io.ts'
import type { StoryInput } from './task.ts'

interface Change {
  /** Relative to the folder where the check runs. */
  readonly path: string
  /** The id of the staged text in git. */
  readonly blob: string
}

/**
 * Two calls of git, whatever is staged, and one more where a path leads out of this folder. `given` are the paths to
 * keep to; none mean the current folder. A rename is listed as the file of its new name, a deletion not at all.
 */
export async function findStaged(given: readonly string[], io: Io): Promise<Result<readonly StoryInput[]>> {
  const top = given.some((path) => isOutside(path, io)) ? findTop(io) : succeed(undefined)
  if (!top.ok) return top
  const listed = listStaged(given, top.value === undefined, io)
  if (!listed.ok) return listed
  const toShown = (path: string): string =>
    top.value === undefined ? path : relative(io.cwd, join(top.value, path)).replaceAll(sep, '/')
  const all = toChanges(listed.value.toString()).map((change) => ({ ...change, path: toShown(change.path) }))
  const changes = await keepStories(all, given, io)
  if (changes.length === 0) return succeed([])
  const texts = askGit(['cat-file', '--batch'], io, changes.map(({ blob }) => `${blob}\n`).join(''))
  if (!texts.ok) return texts
  const blobs = toBlobs(texts.value)
  return succeed(changes.map(({ path }, at) => ({ path, file: resolve(io.cwd, path), text: toText(blobs[at], path) })))
}

/** Paths come relative to this folder, and then without those that are not below it; else relative to the top. */
function listStaged(given: readonly string[], isBelow: boolean, io: Io): GitAnswer {
  const where = isBelow ? '--relative' : '--no-relative'
  const only = ['--no-renames', '--diff-filter=AMT', where, '--', ...given]
  return askGit(['diff', '--cached', '--raw', '-z', '--no-abbrev', ...only], io)
}

/** A path that begins with a colon is one of git's own, such as `:/stories` from the top. */
const isOutside = (path: string, { cwd }: Io): boolean =>
  path.startsWith(':') || /^\.\.(?:[/\\]|$)/.test(relative(cwd, resolve(cwd, path)))

function findTop(io: Io): Result<string> {
  const up = askGit(['rev-parse', '--show-cdup'], io)
  return up.ok ? succeed(resolve(io.cwd, up.value.toString().trim())) : up
}

/** `:100644 100644 OLD NEW M NUL path NUL`; only plain files, whose mode begins with 100. */
function toChanges(raw: string): Change[] {
  const fields = raw.split('\0')
  const changes: Change[] = []
  for (let at = 0; at + 1 < fields.length; at += 2) {
    const [, mode = '', , blob = ''] = (fields[at] ?? '').split(' ')
    if (mode.startsWith('100')) changes.push({ path: fields[at + 1] ?? '', blob })
  }
  return changes
}

/** From the first part of a path with a mark of a pattern in it. */
const PATTERN = /[^/]*[*?[].*$/

/** Nobody named these files, so what is left out is left out without a word. */
async function keepStories(changes: readonly Change[], given: readonly string[], io: Io): Promise<Change[]> {
  const ignoreFiles = createIgnoreFiles(io)
  const bases = (given.length > 0 ? given : ['.']).map((path) => resolve(io.cwd, path.replace(PATTERN, '')))
  const kept: Change[] = []
  for (const change of changes) {
    if (!STORY_NAME.test(change.path)) continue
    const file = resolve(io.cwd, change.path)
    if ((await isReached(file, bases, ignoreFiles, io)) && !(await ignoreFiles.findReason(file))) kept.push(change)
  }
  return kept
}

/** Whether a walk from one of the paths comes to the file: it passes by `.github` and its like, unless they are named. */
async function isReached(file: string, bases: readonly string[], ignoreFiles: IgnoreFiles, io: Io): Promise<boolean> {
  const above = bases.filter((base) => file === base || file.startsWith(base.endsWith(sep) ? base : base + sep))
  // A path of git's own names no folder: the walk begins here.
  for (const base of above.length > 0 ? above : [io.cwd]) if (await isOpenBelow(base, file, ignoreFiles)) return true
  return false
}

async function isOpenBelow(base: string, file: string, ignoreFiles: IgnoreFiles): Promise<boolean> {
  let folder = base
  for (const name of relative(base, file).split(sep).slice(0, -1)) {
    folder = join(folder, name)
    if (name !== '..' && !(await isOpen(folder, name, ignoreFiles))) return false
  }
  return true
}

const NEWLINE = 0x0a

/** `ID blob SIZE NEWLINE bytes NEWLINE` for each id asked; `ID missing NEWLINE` where git has lost it. */
function toBlobs(output: Buffer): (Buffer | undefined)[] {
  const blobs: (Buffer | undefined)[] = []
  for (let at = 0; at < output.length; ) {
    const newline = output.indexOf(NEWLINE, at)
    if (newline < 0) break
    const [, kind, size] = output.subarray(at, newline).toString().split(' ')
    at = newline + 1
    if (kind !== 'blob') {
      blobs.push(undefined)
      continue
    }
    const end = at + Number(size)
    blobs.push(output.subarray(at, end))
    at = end + 1
  }
  return blobs
}

const toText = (blob: Buffer | undefined, path: string): NonNullable<StoryInput['text']> =>
  blob ? decodeUtf8(blob, path) : fail({ code: 'git', message: `git has lost the staged text of \`${path}\`` })
