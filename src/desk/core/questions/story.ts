// What a check says: pages, marks and places.

import type { Problem, Range } from '../../../problem/index.ts'

export type CheckAnswer = CheckedText | UncheckedText

interface Versioned {
  readonly path: string
  readonly version: number
}

/** A story that cannot be checked, and why; a reason may stand in another file (its `path`), such as its sequence. */
interface UncheckedText extends Versioned {
  readonly checked: false
  readonly problems: readonly Problem[]
}

export interface CheckedText extends Versioned {
  readonly checked: true
  readonly sequence: { readonly name: string; readonly title: string }
  readonly step: { readonly id: string; readonly title: string }
  readonly accent: string
  /** For whom it is read, with the caution that goes with it: to be shown as it is. */
  readonly reader: { readonly name: string; readonly notice: string } | null
  /** In order. */
  readonly pages: readonly PageCount[]
  /** Running words of the whole story, and how many of them cannot be read yet. */
  readonly total: { readonly words: number; readonly notYet: number; readonly readableShare: number }
  /** Mistakes of the settings of the folder, each with its file and place. The rest works without what they say. */
  readonly told: readonly Problem[]
  /** In order of place. Each has a card. */
  readonly places: readonly Place[]
  /** In order of place: what is drawn in the text. */
  readonly marks: readonly Mark[]
}

export interface PageCount extends Range {
  /** From 1. */
  readonly number: number
  readonly words: number
  readonly notYet: number
}

/**
 * Letters to blame have a bar and a tint, the whole word a dotted line. A stretch is no word: a long sentence, a comma that is
 * not taught yet, a setting.
 */
export interface Mark extends Range {
  readonly kind: 'letters' | 'word' | 'stretch'
  /** The number of its place in `places`. */
  readonly place: number
}

/** One place in the story that asks for a look. */
export interface Place extends Range {
  readonly page: number
  readonly severity: 'error' | 'warning'
  /** As written; null for a place that is no word: a long sentence, a setting. */
  readonly word: string | null
  /** One sentence, as `battledore check` says it. */
  readonly message: string
  /** What to do, where the rule says more. */
  readonly note: string | null
  readonly rule: string
  readonly reason: string | null
  /** Blamed letters, as ranges in the word. */
  readonly letters: readonly (readonly [number, number])[]
  readonly readableAt: string | null
  /** The line in which it begins, from 1. */
  readonly line: number
}
