// Which words are worth listing: those in use, that are no names and no abbreviations.

import type { WordFacts } from '../words/facts.ts'

/** Of the words that no list for children has, the 27,000 most used; the rest are words that no story for children needs. */
const RAREST = 27

/** A form is met less often than its base: `reeds` is worth listing where `reed` is. */
const RAREST_WITH_FORMS = 26
const RAREST_FORM = 30

/**
 * Whether a word is worth listing. A word without a main part of speech is a name or an abbreviation.
 * @param bases facts of the words that it may be a form of, in the same form
 */
export const isInUse = ({ main, known, rarity, inflection }: WordFacts, bases: readonly WordFacts[] = []): boolean =>
  main !== undefined &&
  (known > 0 ||
    rarity <= RAREST ||
    (inflection !== 'none' &&
      rarity <= RAREST_FORM &&
      bases.some((base) => base.main !== undefined && base.rarity <= RAREST_WITH_FORMS)))
