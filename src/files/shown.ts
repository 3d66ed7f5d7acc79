// Names of files as they are shown to people.

import { type Problem, toProblem } from '../problem/index.ts'

/** A path in backquotes; with its control characters spelt out, so that it stays on one line. */
export function toShownPath(path: string): string {
  return `\`${hasControl(path) ? JSON.stringify(path).slice(1, -1) : path}\``
}

function hasControl(path: string): boolean {
  return /\p{Cc}/u.test(path)
}

export const toMissing = (path: string): Problem =>
  toProblem({ code: 'missing-file', message: `${toShownPath(path)} is not there` })
