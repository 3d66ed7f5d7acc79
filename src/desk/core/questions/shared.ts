// What many questions have in common: the story they are about, the changes that come of them, and how they fail.

import type { Problem } from '../../../problem/index.ts'

/** A story as it stands in the editor, and for whom it is read. */
export interface StoryText {
  /** In the folder, with `/`; a story that has no file yet goes by the path that it would get. */
  readonly path: string
  /** With `\n` at the end of each line. */
  readonly text: string
  /** Grows with every change of the text, the settings or the reader. */
  readonly version: number
  /** The path of a reader file of the folder; without one, the step of the story holds. */
  readonly reader?: string
}

/** Put `text` in the place of what stands between two offsets. */
export interface DeskEdit {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** The smallest change of one file. Its edits never overlap, stand in order, and all count in the text as it was before. */
export interface Changed {
  /** The story itself, or another file of the folder. */
  readonly path: string
  readonly edits: readonly DeskEdit[]
  /** The text that the edits count in; null for a file that is to be made. For a story, the text of the question. */
  readonly before: string | null
}

/** What was asked, or why not: at least one problem, each with a message for the maker. */
export type Tried<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] }
