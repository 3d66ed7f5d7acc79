// What a check needs from outside: engines, sequences and the tagger, handed in so that the core reads no files itself.

import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import type { WordHelp } from './suggest.ts'

/** A sequence that could not be had, with the reason in one line and the mistakes of its file. */
export interface MissingSequence {
  readonly problems: readonly string[]
}

export interface Resources {
  phonicsFor(accent: Accent): Phonics
  /** A built-in name, or a path. `accent` undefined: the sequence's own. */
  sequence(nameOrPath: string, accent: Accent | undefined): Promise<Sequence | MissingSequence>
  /** Loaded at the first sentence that needs it. */
  tagger(): Promise<Tagger>
  /** What is known of words, for suggestions and for how well children know them; without it, messages have none. */
  wordHelp?(): Promise<WordHelp>
}

export const isMissing = (found: Sequence | MissingSequence): found is MissingSequence => 'problems' in found
