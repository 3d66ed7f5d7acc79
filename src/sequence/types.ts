// What is taught when: a sequence is a list of steps, and each step adds to all before it.

import type { Accent, CorrespondenceKey } from '../phonics/types.ts'

/** A correspondence as a teacher writes it: `ai as in rain`. */
export interface TaughtCorrespondence {
  readonly letters: string
  readonly example: string
  readonly key: CorrespondenceKey
}

/** An ending that can be taught. `-s` covers the plural and the third person; `'s` the owner's. */
export type Ending = '-s' | '-es' | '-ed' | '-ing' | '-er' | '-est' | "'s"

/** How an ending changes the word before it: `running`, `baking`, `dying`, `cried`. */
export type EndingChange = 'double' | 'drop-e' | 'ie-to-y' | 'y-to-i'

/** Upper limits; a missing one is no limit. Words of a sentence and so on are whole numbers. */
export interface Limits {
  readonly letters?: number
  readonly syllables?: number
  readonly sentenceWords?: number
  readonly pageSentences?: number
  readonly pageWords?: number
}

/** How a step moves limits: a new figure, or `any` for none. */
export type LimitChanges = { readonly [Limit in keyof Limits]?: number | 'any' }

/** Capital letters a child can read: none, those that open sentences and names, or words all in capitals too. */
export type Capitals = 'none' | 'first' | 'all'

/** What one step adds. */
export interface StepAdds {
  readonly correspondences: readonly TaughtCorrespondence[]
  readonly sightWords: readonly string[]
  /** Shapes such as `CVC`; `any` lifts the limit. */
  readonly shapes: readonly string[] | 'any'
  readonly endings: readonly Ending[]
  readonly endingChanges: readonly EndingChange[]
  /** Contractions such as `can't`, or `any`. */
  readonly contractions: readonly string[] | 'any'
  /** Marks such as `.` and `,`; `any` lifts the limit. */
  readonly marks: readonly string[] | 'any'
  readonly capitals: Capitals | undefined
  readonly numerals: boolean | undefined
  /** A limit of an earlier step is replaced; `any` lifts it. */
  readonly limits: LimitChanges
}

export interface Step {
  readonly id: string
  readonly title: string
  readonly adds: StepAdds
}

export interface Sequence {
  readonly name: string
  readonly title: string
  /** The accent the sequence was written for; the user can choose another. */
  readonly accent: Accent
  readonly steps: readonly Step[]
  /** Sets of letters that look alike, as `bdpq`. */
  readonly lookAlikes: readonly string[]
  /**
   * Whether an ending must be taught as such, or may be sounded out by taught correspondences. `named`: those that a step
   * names must be taught, the others are sounded out.
   */
  readonly endings: 'taught' | 'sounded' | 'named'
  /** `accept`: a short-vowel letter worn down in an unstressed syllable is readable once two syllables are taught. */
  readonly reducedVowels: 'accept' | 'flag'
}

/** All that a child at a step has been taught: the sum of the steps so far, and a reader's own more or less. */
export interface Knowledge {
  readonly correspondences: ReadonlySet<CorrespondenceKey>
  /** Lower case, except `I`; contractions taught by name are among them. */
  readonly sightWords: ReadonlySet<string>
  /**
   * What was known at the step that taught a sight word. A word that could be sounded out there already and was taught by
   * heart all the same (`today`, `every`) is held for an exception, and stays a sight word.
   */
  readonly knownWithSightWord?: Pick<ReadonlyMap<string, Knowledge>, 'get'>
  readonly shapes: ReadonlySet<string> | 'any'
  readonly endings: ReadonlySet<Ending>
  readonly endingChanges: ReadonlySet<EndingChange>
  readonly contractions: ReadonlySet<string> | 'any'
  readonly marks: ReadonlySet<string> | 'any'
  readonly capitals: Capitals
  readonly numerals: boolean
  readonly limits: Limits
  /** Endings that may be sounded out letter by letter. */
  readonly soundedEndings: ReadonlySet<Ending>
  /** Changes that no step names: the changed letters are sounded out as they stand. */
  readonly soundedChanges: ReadonlySet<EndingChange>
  readonly reducedVowels: 'accept' | 'flag'
}
