// What is wrong with a file, in one line that a teacher can act on.

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

/** A path in backquotes; with its control characters spelt out, so that it stays on one line. */
export function toShownPath(path: string): string {
  return `\`${hasControl(path) ? JSON.stringify(path).slice(1, -1) : path}\``
}

function hasControl(path: string): boolean {
  return /\p{Cc}/u.test(path)
}

export function toFileMessage(path: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  const what = code === undefined ? undefined : (MESSAGES[code] ?? `could not be read or written (${code})`)
  return `${toShownPath(path)} ${what ?? 'could not be read or written'}.`
}
