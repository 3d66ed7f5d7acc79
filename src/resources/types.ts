// What a check needs from outside: engines, sequences and the tagger, handed in so that the core reads no files itself.

import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import type { Result } from '../problem/index.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Fitness, Suggester, WordFacts } from '../words/index.ts'

export interface Resources {
  phonicsFor(accent: Accent): Phonics
  /** A built-in name, or a path; else why there is none, or all mistakes of its file. `accent` undefined: the sequence's own. */
  sequence(nameOrPath: string, accent: Accent | undefined): Promise<Result<Sequence>>
  /** Loaded at the first sentence that needs it. */
  tagger(): Promise<Tagger>
  /** What is known of words, for suggestions and for how well children know them; without it, messages have none. */
  wordHelp?(): Promise<WordHelp>
}

/** For whom words are proposed, and what the project adds to the unfit words and clears. */
export interface SuggestPlace {
  readonly sequence: Sequence
  readonly step: string
  readonly reader?: ReaderExtra | undefined
  readonly unfit: readonly string[]
  readonly fit: readonly string[]
}

/** What is known of words beside their sounds. */
export interface WordHelp {
  /** Undefined for a word that the dictionary lacks. */
  factsOf(word: string): WordFacts | undefined
  /** What may be proposed, with what a project adds and clears. */
  fitnessFor(own: Pick<SuggestPlace, 'unfit' | 'fit'>): Fitness
  /** Made once for each place. */
  suggesterFor(place: SuggestPlace): Suggester
}
