// The verdict on one word at one step, and the figures that are counted from verdicts.

import type { CorrespondenceKey, Pronunciation, Span, Unit, WordPronunciations } from '../phonics/types.ts'

/** Why a child cannot read a word yet. Kept in order of use to a teacher: the first is the one shown. */
export type ReasonCode =
  | 'abbreviation'
  | 'sight-word-later'
  | 'correspondence-later'
  | 'irregular'
  | 'correspondence-untaught'
  | 'too-many-letters'
  | 'too-many-syllables'
  | 'shape'
  | 'ending'
  | 'contraction'
  | 'reduced-vowel'
  | 'misspelt'
  | 'unknown-word'
  | 'unsure'

export interface Reason {
  readonly code: ReasonCode
  /** The letters to blame, as ranges in the word. */
  readonly letters: readonly Span[]
  /** The step that teaches what is missing; undefined where the sequence never does. */
  readonly taughtAt?: string
  /** The unit to blame, where there is one. */
  readonly unit?: Unit
  readonly key?: CorrespondenceKey
  /** The figure found and the figure allowed, for the limits. */
  readonly found?: number | string
  readonly allowed?: number | string
}

/** A word as it is meant: its sentence may show that it is an abbreviation, where its letters do not. */
export interface MeantWord extends WordPronunciations {
  readonly isAbbreviated?: true
}

export interface Verdict {
  readonly readable: boolean
  readonly kind: 'decodable' | 'sight' | 'name' | 'unreadable'
  /** True where a word that can be sounded out has been learnt by heart too. */
  readonly isByHeart?: true
  /** Empty where the word is readable. */
  readonly reasons: readonly Reason[]
  /** The pronunciation that was judged: the readable one, else the nearest to it. Undefined for a word without letters. */
  readonly pronunciation: Pronunciation | undefined
  /** Whether the pronunciation was guessed from the letters. */
  readonly guessed: boolean
}

/** One spoken form of a heteronym, judged. */
export interface JudgedForm {
  readonly form: string
  /** What it means, for a teacher. */
  readonly meaning: string
  readonly readable: boolean
  /** The earliest step at which it is readable; null where the sequence never gets there. */
  readonly readableAt: string | null
}

/** A word of the story as rules see it: judged once per different word (and spoken form). */
export interface JudgedWord {
  readonly pronunciations: WordPronunciations
  readonly verdict: Verdict
  /**
   * The earliest step at which the word is readable; null where the sequence never gets there. Found when first asked for. Of a
   * heteronym whose sentence does not tell which form is meant, the step at which all of them are.
   */
  readonly readableAt: string | null
  /** For a heteronym whose forms become readable at different steps: not all are yet, and the sentence did not tell which is meant. */
  readonly unsettled: boolean
  /** The spoken form that the sentence asks for; undefined for a word that has but one, and where the sentence does not tell. */
  readonly form: string | undefined
  /** The spoken forms of a heteronym, where they are judged differently; else empty. Found when first asked for. */
  readonly forms: readonly JudgedForm[]
}

/** Counts over running words, or over different words. Shares are 0 to 1; 1 where there are no words. */
export interface Figures {
  readonly words: number
  readonly decodable: number
  readonly sight: number
  readonly names: number
  readonly unreadable: number
  /** decodable ÷ words */
  readonly decodableShare: number
  /** (decodable + sight + names) ÷ words */
  readonly readableShare: number
}
