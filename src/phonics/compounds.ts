// A compound is two words that people put together: `henhouse`, but not `thedog`, `catand` or `floost`.

import { findBonds } from './guess/bonds.ts'
import type { Lexicon } from './lexicon/open.ts'

/** Where a word that nobody listed parts into two that make compounds, the first as long as can be. */
export function findSeam(word: string, lexicon: Lexicon): number | undefined {
  for (let at = word.length - LEAST; at >= LEAST; at--) {
    const last = toGrade(word.slice(at), lexicon) & 3
    const first = last === 0 ? 0 : toGrade(word.slice(0, at), lexicon) >> 2
    // A part that stands in many compounds goes with any; a taught pair is torn only between two of them (`t·h`).
    const least = findBonds(word).has(at) ? STRONGEST : STRONG
    // Neither is more than 2, so that both are some part.
    if (first + last >= least) return at
  }
  return undefined
}

const LEAST = 3
const STRONG = 3
const STRONGEST = 4

const toGrade = (word: string, lexicon: Lexicon): number => lexicon.parts.get(lexicon.indexOf(word)) ?? 0
