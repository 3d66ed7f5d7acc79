// Makes the engines that read words, one for each accent, from the bytes of the lexicon.

import { createPhonics, createSpelling, type Lexicon, openLexicon, type Spelling } from '../phonics/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'

export interface Engines {
  lexicon(): Lexicon
  /** How words are cut, whatever the accent; made once. */
  spelling(): Spelling
  /** The engine in an accent; made once. */
  phonicsFor(accent: Accent): Phonics
}

/** @param readLexicon the bytes of `lexicon.bin`, asked for once and only when a word is first read */
export function createEngines(readLexicon: () => Uint8Array): Engines {
  const engines = new Map<Accent, Phonics>()
  let opened: Lexicon | undefined
  let made: Spelling | undefined
  const lexicon = (): Lexicon => (opened ??= openLexicon(readLexicon()))
  const spelling = (): Spelling => (made ??= createSpelling(lexicon()))
  return {
    lexicon,
    spelling,
    phonicsFor(accent) {
      const known = engines.get(accent)
      if (known) return known
      const engine = createPhonics(lexicon(), accent, spelling())
      engines.set(accent, engine)
      return engine
    },
  }
}
