// Texts as they stood, with the end of each of their lines: edits carry none, so undo would give a line that comes back the end of its neighbour.

import type { KeptText } from './line-ends.ts'

export interface KnownTexts {
  /** Of a text whose lines are about to become more or fewer. */
  remember(before: KeptText): void
  /** The same text as it stood before, or what it was handed. */
  recall(kept: KeptText): KeptText
}

/** More steps back than these in a file of mixed line ends come back with the ends of their neighbours. */
const MOST = 500

export function createKnownTexts(): KnownTexts {
  const known: KeptText[] = []
  return {
    remember(before) {
      // Where all lines end alike, there is nothing to forget.
      if (new Set(before.ends).size < 2 || known.at(-1)?.text === before.text) return
      known.push(before)
      if (known.length > MOST) known.splice(1, 1)
    },
    recall: (kept) => known.findLast(({ text }) => text === kept.text) ?? kept,
  }
}
