// The stories that are staged for the next commit, with their staged text.

import { resolve } from 'node:path'
import { askGit } from '../git.ts'
import { createIgnoreFiles } from '../ignore-files.ts'
import type { Io } from '../io.ts'
import { decode } from '../read.ts'
import { STORY_NAME } from '../walk.ts'
import type { StoryInput } from './task.ts'

export type Staged = { readonly files: readonly StoryInput[] } | { readonly message: string }

interface Change {
  /** Relative to the folder where the check runs. */
  readonly path: string
  /** The id of the staged text in git. */
  readonly blob: string
}

/**
 * Two calls of git, whatever is staged. `given` are the paths to keep to; none mean the current folder.
 * A rename is listed as the file of its new name, a deletion not at all.
 */
export async function findStaged(given: readonly string[], io: Io): Promise<Staged> {
  const listed = askGit(
    [
      'diff',
      '--cached',
      '--raw',
      '-z',
      '--no-abbrev',
      '--no-renames',
      '--diff-filter=AMT',
      '--relative',
      '--',
      ...given,
    ],
    io,
  )
  if (!listed.ok) return { message: listed.message }
  const changes = await keepStories(toChanges(listed.stdout.toString()), io)
  if (changes.length === 0) return { files: [] }
  const texts = askGit(['cat-file', '--batch'], io, changes.map(({ blob }) => `${blob}\n`).join(''))
  if (!texts.ok) return { message: texts.message }
  const blobs = toBlobs(texts.stdout)
  return {
    files: changes.map(({ path }, at) => ({ path, file: resolve(io.cwd, path), text: toText(blobs[at], path) })),
  }
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

/** Nobody named these files, so what is left out is left out without a word. */
async function keepStories(changes: readonly Change[], io: Io): Promise<Change[]> {
  const ignoreFiles = createIgnoreFiles(io)
  const kept: Change[] = []
  for (const change of changes) {
    if (STORY_NAME.test(change.path) && !(await ignoreFiles.findReason(resolve(io.cwd, change.path)))) kept.push(change)
  }
  return kept
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
  blob ? decode(blob, path) : { ok: false, message: `git has lost the staged text of \`${path}\`.` }
