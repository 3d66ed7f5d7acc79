// A sequence read step by step, and the changes of one's own.

import type { Problem } from '../../../problem/index.ts'
import type { SequenceChange } from '../../../sequence/change.ts'

export interface SequenceItem {
  readonly kind: 'sound' | 'word' | 'ending' | 'contraction'
  /** As a teacher writes it: `ai as in rain`, `said`, `-ed`. */
  readonly written: string
  /** For a sound: its letters and its example word. */
  readonly letters: string | null
  readonly example: string | null
  /** Whether the file itself says it, so that it can be changed here; not what it extends. */
  readonly isOwn: boolean
}

export interface SequenceStep {
  readonly id: string
  readonly title: string
  readonly items: readonly SequenceItem[]
  /** What else the step says, one line each: shapes, marks, limits. */
  readonly more: readonly string[]
  /** Mistakes of this step. */
  readonly problems: readonly Problem[]
}

export interface SequenceShown {
  /** The name by which it was asked for. */
  readonly name: string
  readonly title: string
  readonly accent: string
  /** The file, where it is one of this folder; null for a built-in one. */
  readonly path: string | null
  /** The sequence that it extends. */
  readonly extends: string | null
  readonly steps: readonly SequenceStep[]
  /** All mistakes, those of the steps among them. Without a sequence, `steps` is empty and this says why. */
  readonly problems: readonly Problem[]
  /** The text of the file. */
  readonly text: string | null
}

/** Each is judged before it goes in; what cannot be taught comes back as a problem. */
export type SequenceEdit = SequenceChange

/** One line a step, as `a as in cat, m as in mat, the`; words before a colon are its title. */
export interface SequenceNew {
  readonly path: string
  readonly title: string
  readonly accent: 'general-american' | 'southern-british'
  readonly steps: readonly string[]
}
