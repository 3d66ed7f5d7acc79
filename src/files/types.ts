// Where texts come from: the disk, or a folder in the browser that can only be asked and waited for.

import type { Result } from '../problem/index.ts'

/** The text of a file, or why it cannot be read; undefined where there is none. Paths have forward slashes. */
export type ReadText = (path: string) => Promise<Result<string> | undefined>

export interface TextFiles {
  readonly read: ReadText
  /** The names in a folder, in any order; undefined where there is no folder of that name, a file among it. */
  list(folder: string): Promise<Result<readonly string[]> | undefined>
  /** Makes a path fit for messages. */
  show(path: string): string
}
