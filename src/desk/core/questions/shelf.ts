// The shelf: all stories of the folder in the order in which they are read, and what each brings.

import type { Problem } from '../../../problem/index.ts'

export interface BookRow {
  readonly path: string
  /** Its title, or the name of its file. */
  readonly title: string
  readonly order: number | null
  readonly sequence: string
  readonly step: { readonly id: string; readonly title: string } | null
  readonly pages: number
  readonly words: number
  readonly different: number
  /** 0 to 1; null where no step is known. */
  readonly readableShare: number | null
  /** Running words that cannot be read; null where no step is known. */
  readonly notYet: number | null
  /** Words that no earlier book has used, in order of place. */
  readonly newWords: readonly string[]
  readonly newSightWords: readonly string[]
  /** Sight words of earlier books that come back here, with how often. */
  readonly returns: readonly { readonly word: string; readonly times: number }[]
  readonly practises: readonly { readonly pattern: string; readonly words: number; readonly different: number }[]
  /** The first step at which all of it can be read; null beyond the last. */
  readonly earliestStep: string | null
}

export interface ShelfAnswer {
  /** In the order in which they are read. */
  readonly books: readonly BookRow[]
  /** Steps that no book is for, by sequence. */
  readonly missingSteps: readonly {
    readonly sequence: string
    readonly title: string
    readonly steps: readonly string[]
  }[]
  /** Sight words that no book after the first one with them uses. */
  readonly neverReturning: readonly string[]
  /** Files that are no story, or that cannot be read, and why. */
  readonly unread: readonly { readonly path: string; readonly problems: readonly Problem[] }[]
  readonly problems: readonly Problem[]
}
