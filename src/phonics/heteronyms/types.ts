// The shape of a heteronym: one spelling, two spoken words, and what in a sentence gives each of them away.

import type { Place } from './place.ts'

/** The grammar that tells pronunciations apart. `verb` is the base or -s form; `past` is the past tense and the past participle. */
export type WordClass = 'noun' | 'adjective' | 'adverb' | 'verb' | 'past'

/** One of the spoken words that share a spelling. */
export interface HeteronymForm {
  /** A short key, unique in its row: `past`, `verb`, `knot`. It is the `form` of a `Pronunciation`. */
  readonly form: string
  /** Empty for a form so rare that only a phrase or a topic may speak for it. */
  readonly classes: readonly WordClass[]
  /** ARPAbet with stress digits, as the CMU Pronouncing Dictionary writes it under the word, or `word(2)`. */
  readonly sounds: string
  /** True where the dictionary lacks this pronunciation, so that the sounds were written by hand. */
  readonly byHand?: true
  /** For a teacher, in plain words. */
  readonly meaning: string
  /** Word patterns round the word, written `_`, that belong to this form alone, or, listed with two forms, to neither for sure; see phrases.ts for how they are written. */
  readonly phrases?: readonly string[]
  /** Words, parted by spaces, that in the same sentence speak for this form against another of the same class. */
  readonly topics?: string
  /** Words with hyphens, parted by spaces, in which it has this form; `*` stands for any other parts. */
  readonly hyphened?: string
  /** `capital`: always written with a capital, as a name is. */
  readonly written?: 'capital'
}

export interface Heteronym {
  /** In small letters. */
  readonly word: string
  /** The form to take when nothing speaks for the other one; only where the other one is rare in any text. */
  readonly otherwise?: string
  /** The form to take where the tagger is silent too and the word could not be the other one here, by its place. */
  readonly fallback?: string
  /**
   * Of two things, the one to take where no word of the sentence speaks for the other: `tears` of the eye. The other may be a verb that is a thing
   * only where its topics say so: the `bows` of a boat.
   */
  readonly thing?: string
  /** Phrases in which neither `thing` nor `otherwise` is taken: `with a bow` may be a gift or a greeting. */
  readonly doubts?: readonly string[]
  readonly forms: readonly HeteronymForm[]
}

/** The likeliest form by what stands round the word, and how likely it is: at most 1. */
export interface Likely {
  readonly form: string
  readonly share: number
}

/** Undefined for a word that the model has not learned to tell. */
export type Weigh = (row: Heteronym, place: Place) => Likely | undefined

/** The table, asked by spelling. */
export interface Heteronyms {
  /** The row of a word in any case; undefined for a word with one spoken form. */
  find(word: string): Heteronym | undefined
  /** What a small model that learned from judged sentences holds likely; missing where there is none. */
  readonly weigh?: Weigh
}

/** True where the spelling has an -s of its own, as `records` and not `address`. */
export const isInflected = (word: string): boolean => /[^s]s$/.test(word)

/** A form as its file has it. */
export interface WrittenForm extends HeteronymForm {
  readonly example: string
}

/** A row as its file has it: for whoever reads the files. The program needs neither note nor examples, and the lexicon has none. */
export interface WrittenHeteronym extends Heteronym {
  /** Where Britain and America differ, or the dictionary misleads. */
  readonly note?: string
  readonly forms: readonly WrittenForm[]
}
