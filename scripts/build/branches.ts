// Branches of WordNet's tree of nouns, named by the meaning at their head.

import type { WordNet } from './wordnet.ts'

/** Lemma, number of its noun sense from 1, reason. */
export type Branch = readonly [lemma: string, sense: number, reason: string]

/** The synsets at the heads. Throws where WordNet has no such sense. */
export const toOffsets = (branches: readonly Branch[], wordnet: WordNet): ReadonlySet<number> =>
  new Set(
    branches.map(([lemma, number]) => {
      const sense = wordnet.senses(lemma, 'noun')[number - 1]
      if (sense === undefined) throw new Error(`WordNet has no sense ${number} of ${lemma}`)
      return sense.offset
    }),
  )
