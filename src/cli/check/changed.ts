// Which lines of which files have changed since a commit.

import { resolve } from 'node:path'
import { type Result, succeed } from '../../problem/index.ts'
import { askGit } from '../files/git.ts'
import type { Io } from '../io.ts'

/** First and last line, from 1. */
export type LineRange = readonly [first: number, last: number]

/** By absolute path; `all` for a file that git does not know. */
export type ChangedLines = ReadonlyMap<string, readonly LineRange[] | 'all'>

/**
 * What the branch has changed since it left `since`, as a reviewer sees it; with `isStaged`, of what is staged.
 * Where the two have no commit in common, as in a shallow clone, they are compared as they are.
 */
export function findChanged(since: string, isStaged: boolean, io: Io): Result<ChangedLines> {
  const up = askGit(['rev-parse', '--show-cdup'], io)
  if (!up.ok) return up
  const top = resolve(io.cwd, up.value.toString().trim())
  const diff = (...more: string[]) =>
    askGit(
      [
        '-c',
        'core.quotePath=false',
        'diff',
        '-U0',
        '--no-color',
        '--no-ext-diff',
        '--no-textconv',
        '--find-renames',
        '--no-relative',
        '--src-prefix=a/',
        '--dst-prefix=b/',
        ...(isStaged ? ['--cached'] : []),
        ...more,
        '--end-of-options',
        since,
        '--',
      ],
      io,
    )
  const branch = diff('--merge-base')
  const answer = branch.ok ? branch : diff()
  if (!answer.ok) return answer
  const changed = new Map<string, readonly LineRange[] | 'all'>()
  for (const [path, ranges] of toRanges(answer.value.toString())) changed.set(resolve(top, path), ranges)
  if (isStaged) return succeed(changed)
  const unknown = askGit(['ls-files', '--others', '--exclude-standard', '-z', '--full-name', '--', top], io)
  if (!unknown.ok) return unknown
  for (const path of unknown.value.toString().split('\0')) if (path !== '') changed.set(resolve(top, path), 'all')
  return succeed(changed)
}

/** Reads `+++ b/PATH` and `@@ -1 +4,2 @@`; lines of the texts themselves begin with `+` or `-` and never follow a header. */
export function toRanges(diff: string): Map<string, LineRange[]> {
  const files = new Map<string, LineRange[]>()
  let ranges: LineRange[] | undefined
  let left = 0
  for (const line of diff.split('\n')) {
    const hunk = left === 0 ? /^@@ -\d+(?:,(\d+))? \+(\d+)(?:,(\d+))? @@/.exec(line) : null
    if (left > 0) {
      if (/^[-+]/.test(line)) left--
    } else if (hunk) {
      const [, before = '1', first = '0', count = '1'] = hunk
      left = Number(before) + Number(count)
      if (Number(count) > 0) ranges?.push([Number(first), Number(first) + Number(count) - 1])
    } else if (line.startsWith('+++ ')) {
      const path = toPath(line.slice(4))
      ranges = path === undefined ? undefined : []
      if (path !== undefined && ranges) files.set(path, ranges)
    }
  }
  return files
}

/** Undefined for a file that is gone (`/dev/null`). A path with a space has a tab after it; one with odd characters is quoted. */
function toPath(given: string): string | undefined {
  const path = given.startsWith('"') ? unquote(given) : given.replace(/\t$/, '')
  return path.startsWith('b/') ? path.slice(2) : undefined
}

const ESCAPES: Readonly<Record<string, string>> = {
  a: '\x07',
  b: '\b',
  t: '\t',
  n: '\n',
  v: '\v',
  f: '\f',
  r: '\r',
  '"': '"',
  '\\': '\\',
}

/** As git quotes: backslash escapes as in C, other control characters in octal. */
const unquote = (quoted: string): string =>
  quoted
    .slice(1, quoted.lastIndexOf('"'))
    .replace(/\\([0-7]{3}|.)/g, (_, code: string) => ESCAPES[code] ?? String.fromCharCode(Number.parseInt(code, 8)))
