// What can be put before a child for a set: words whose thing or picture it calls by this name first, the others after them.

import { type FoundWord, findWords, type WordQuery } from './find.ts'
import type { Pool } from './pool.ts'
import type { ProposedSet } from './sets.ts'

export type ShowAs = 'object' | 'picture'

/** Words of one syllable. What nobody has judged is taken for a picture only where children know the word. */
export function findShown(pool: Pool, query: WordQuery, showAs: ShowAs): readonly FoundWord[] {
  const all = { ...query, syllables: { from: 1, to: 1 }, [showAs]: true, count: Infinity }
  return findWords(pool, all).words.filter(({ shown, facts }) => shown !== undefined || facts.known > 0)
}

/**
 * First of what children say at first sight; the others are taken only where those are too few.
 * @param enough how many words will do; without it, as many as were asked for
 */
export function proposeByClass(
  words: readonly FoundWord[],
  showAs: ShowAs,
  make: (words: readonly FoundWord[], isFine: boolean) => ProposedSet,
  enough = Infinity,
): ProposedSet {
  const isIn = (classes: string): FoundWord[] =>
    words.filter(({ shown }) => shown !== undefined && classes.includes(shown[showAs]))
  for (const classes of ['fine', 'fine hint', 'fine hint likelier']) {
    const found = make(isIn(classes), classes === 'fine')
    if (!found.relaxed.includes('fewer') || found.words.length >= enough) return found
  }
  return make(words, false)
}
