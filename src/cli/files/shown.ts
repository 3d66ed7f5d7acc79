// Paths as the core takes them, and as people see them: with forward slashes, from the folder where the program runs.

import { sep } from 'node:path'
import type { Io } from '../io.ts'

export const toSlashes = (path: string): string => path.replaceAll(sep, '/')

export function toShown(path: string, { cwd }: Pick<Io, 'cwd'>): string {
  const folder = `${toSlashes(cwd)}/`
  return path.startsWith(folder) ? path.slice(folder.length) : path
}
