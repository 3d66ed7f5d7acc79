// Joining paths with forward slashes, without the file system: the core also runs where there is none.

/** What no `..` leaves: `/`, `C:/`, `//server/share/`, or nothing for a relative path. */
function toRoot(path: string): string {
  const [share] = /^\/\/[^/]+\/[^/]+/.exec(path) ?? []
  if (share !== undefined) return `${share}/`
  const [root = ''] = /^(?:[A-Za-z]:)?\//.exec(path) ?? []
  return root
}

/** The folder of a path; `` for a bare name, the root for a file in it. */
export function toFolder(path: string): string {
  const root = toRoot(path)
  const slash = path.lastIndexOf('/')
  return slash < root.length ? root : path.slice(0, slash)
}

/** The folder above, or undefined at the top. */
export function findParent(folder: string): string | undefined {
  const isTop = folder === '' || /^[A-Za-z]:$/.test(folder) || toRoot(folder).startsWith(folder)
  return isTop ? undefined : toFolder(folder)
}

export function isAbsolute(path: string): boolean {
  return path.startsWith('/') || /^[A-Za-z]:[\\/]/.test(path)
}

/** A path as seen from a folder; an absolute path stays as it is. `.` and `..` are worked out. */
export function joinPath(folder: string, path: string): string {
  const own = /^[A-Za-z]:\\/.test(path) ? path.replaceAll('\\', '/') : path
  const whole = isAbsolute(own) || folder === '' ? own : `${folder}${folder.endsWith('/') ? '' : '/'}${own}`
  const root = toRoot(whole)
  const parts: string[] = []
  for (const part of whole.slice(root.length).split('/')) {
    if (part === '' || part === '.') continue
    const last = parts.at(-1)
    if (part === '..' && last !== undefined && last !== '..') parts.pop()
    else if (part !== '..' || root === '') parts.push(part)
  }
  return root + parts.join('/')
}

/** The path below a folder, or undefined where it lies elsewhere. */
export function findBelow(folder: string, path: string): string | undefined {
  if (folder === '') return isAbsolute(path) || path.startsWith('../') ? undefined : path
  const prefix = folder.endsWith('/') ? folder : `${folder}/`
  return path.startsWith(prefix) && path.length > prefix.length ? path.slice(prefix.length) : undefined
}

/** Whether the name of a sequence is meant as a path: it has a slash or the ending of a file of settings. */
export const isSequencePath = (name: string): boolean => /[\\/]|\.(?:ya?ml|json)$/i.test(name)
