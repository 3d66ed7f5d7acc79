// The word bank, completion, and a word that somebody types.

import type { Problem } from '../../../problem/index.ts'

type BankKind = 'naming' | 'doing' | 'describing' | 'little'

/** What is missing is not asked. */
export interface BankWish {
  /** Letters that the word holds; those that begin with them come first. */
  readonly search?: string
  /** A `value` of `choices.patterns`. */
  readonly pattern?: string
  /** A `value` of `choices.vowels`. */
  readonly vowel?: string
  readonly kind?: BankKind
  readonly rhymesWith?: string
  readonly picture?: boolean
  /** Not yet used in this story. */
  readonly unused?: boolean
  /** Only what this step brings. */
  readonly newAtStep?: boolean
  /** 60 where nobody says. */
  readonly count?: number
}

export interface BankWord {
  readonly word: string
  readonly kind: BankKind
  /** Known by heart, not by its letters. */
  readonly byHeart: boolean
  readonly readableAt: string | null
}

/** `problem` says what was asked for in vain (a word to rhyme with that nobody knows), in one line. */
export interface BankAnswer {
  readonly version: number
  readonly words: readonly BankWord[]
  readonly more: boolean
  readonly problems: readonly Problem[]
}

/** A spelling as it is taught: `ai` as in `rain`, at green-3. */
export interface Pattern {
  readonly value: string
  readonly letters: string
  readonly example: string
  readonly step: string
}

/** In the order of the sequence, up to the step of the story. */
export interface Choices {
  readonly patterns: readonly Pattern[]
  readonly vowels: readonly Pattern[]
  readonly kinds: readonly BankKind[]
}

/** Words for the letters before the cursor; they stand in the place of `from` … `at`. */
export interface Completions {
  readonly version: number
  readonly from: number
  readonly words: readonly { readonly word: string; readonly kind: 'decodable' | 'sight' | 'name' }[]
}
