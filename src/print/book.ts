// What a story comes to on paper: pages of text and pictures, and what the grown-up must know.

import type { Shown } from './ask.ts'
import type { MarkedText } from './lay/words.ts'

export interface BookBlock {
  readonly kind: 'heading' | 'paragraph'
  readonly text: MarkedText
}

export interface BookPage {
  /** As `battledore check` counts. */
  readonly number: number
  /** Where the page stands in the story's file, for messages. */
  readonly place: string
  readonly blocks: readonly BookBlock[]
  /** Before the text and after it, as in the file. */
  readonly above: readonly Shown[]
  readonly below: readonly Shown[]
}

export interface Book {
  readonly title: string
  /** On the cover. */
  readonly cover: Shown | undefined
  readonly pages: readonly BookPage[]
  /** Paragraphs of the last page, for the grown-up; the first is its head. */
  readonly grownUp: readonly string[]
}
