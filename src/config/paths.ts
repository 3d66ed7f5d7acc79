// Joining paths with forward slashes, without the file system: the core also runs where there is none.

/** The folder of a path; `` for a bare name, `/` for a file at the root. */
export function toFolder(path: string): string {
  const slash = path.lastIndexOf('/')
  return slash < 0 ? '' : slash === 0 ? '/' : path.slice(0, slash)
}

/** The folder above, or undefined at the top. */
export function findParent(folder: string): string | undefined {
  return folder === '' || folder === '/' || /^[A-Za-z]:\/?$/.test(folder) ? undefined : toFolder(folder)
}

export function isAbsolute(path: string): boolean {
  return path.startsWith('/') || /^[A-Za-z]:[\\/]/.test(path)
}

/** A path as seen from a folder; an absolute path stays as it is. `.` and `..` are worked out. */
export function joinPath(folder: string, path: string): string {
  const whole = isAbsolute(path) || folder === '' ? path : `${folder}/${path}`
  const parts: string[] = []
  for (const part of whole.split('/')) {
    if (part === '' || part === '.') continue
    const last = parts.at(-1)
    if (part === '..' && last !== undefined && last !== '..') parts.pop()
    else if (part !== '..' || !whole.startsWith('/')) parts.push(part)
  }
  return (whole.startsWith('/') ? '/' : '') + parts.join('/')
}

/** The path below a folder, or undefined where it lies elsewhere. */
export function findBelow(folder: string, path: string): string | undefined {
  if (folder === '') return isAbsolute(path) || path.startsWith('../') ? undefined : path
  const prefix = folder.endsWith('/') ? folder : `${folder}/`
  return path.startsWith(prefix) && path.length > prefix.length ? path.slice(prefix.length) : undefined
}

/** Whether the name of a sequence is meant as a path. */
export function isPathLike(name: string): boolean {
  return /[\\/]|\.(?:ya?ml|json)$/i.test(name)
}
