// One change to the text of a story: what fixes, settings and switches are made of.

import type { Range } from '../story/types.ts'

/** Put `text` in the place of what stands between two offsets. */
export interface Edit extends Range {
  readonly text: string
}

export const insert = (at: number, text: string): Edit => ({ start: at, end: at, text })

/** As the story ends its lines. */
export const toNewline = (source: string): string => (source.includes('\r\n') ? '\r\n' : '\n')

/** Where its text begins: behind a byte order mark. */
export const findTop = (source: string): number => (source.startsWith('\uFEFF') ? 1 : 0)
