// What is wrong with a file as such, in one line that a teacher can act on. The line names the file, so it needs no path.

import { toShownPath } from '../../files/index.ts'
import { type Problem, toProblem } from '../../problem/index.ts'

const MESSAGES: Readonly<Record<string, string>> = {
  EACCES: 'may not be opened: permission is missing',
  EBUSY: 'is in use by another program',
  EISDIR: 'is a folder, not a file',
  ELOOP: 'is a link that leads back to itself',
  EMFILE: 'could not be opened: too many files are open',
  ENAMETOOLONG: 'has a name that is too long',
  ENOENT: 'is not there',
  ENOSPC: 'could not be written: the disk is full',
  ENOTDIR: 'is not there: a part of its path is a file, not a folder',
  EPERM: 'may not be opened: permission is missing',
  EROFS: 'could not be written: the disk can only be read',
}

export { toShownPath }

export function toFileProblem(path: string, error: unknown): Problem {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  const what = code === undefined ? undefined : (MESSAGES[code] ?? `could not be read or written (${code})`)
  return toProblem({
    code: code === 'ENOENT' || code === 'ENOTDIR' ? 'missing-file' : 'unreadable-file',
    message: `${toShownPath(path)} ${what ?? 'could not be read or written'}`,
  })
}

/** What nobody thought of, told in the words of the error. */
export const toCrash = (error: unknown, what?: string): Problem => {
  const message = error instanceof Error ? error.message : String(error)
  return toProblem({ code: 'crash', message: what === undefined ? message : `${what}: ${message}` })
}
