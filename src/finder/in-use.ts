// Which words are worth listing: those in use, that are no names and no abbreviations.

import type { WordFacts } from '../words/facts.ts'

/** Of the words that no list for children has, the 27,000 most used; the rest are words that no story for children needs. */
const RAREST = 27

/** Whether a word is worth listing. A word without a main part of speech is a name or an abbreviation. */
export const isInUse = ({ main, known, rarity }: WordFacts): boolean =>
  main !== undefined && (known > 0 || rarity <= RAREST)
