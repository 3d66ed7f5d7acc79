// A compound is two words that people put together: `henhouse`, but not `thedog`, `catand` or `floost`.

import { findBonds } from './guess/bonds.ts'
import type { Lexicon } from './lexicon/open.ts'

/** Where two words meet; `isSure` where so many words are made of these that this is one too, and no two words run together. */
export interface Seam {
  readonly at: number
  readonly isSure: boolean
}

/** Where a word that nobody listed parts into two that make compounds, the first as long as can be. */
export function findSeam(word: string, lexicon: Lexicon): Seam | undefined {
  const [, owner] = PEOPLE.exec(word) ?? []
  if (owner !== undefined && lexicon.indexOf(owner) >= 0) return { at: owner.length + 1, isSure: true }
  for (let at = word.length - LEAST; at >= LEAST; at--) {
    const last = toGrade(word.slice(at), lexicon) & 3
    const first = last === 0 ? 0 : toGrade(word.slice(0, at), lexicon) >> 2
    // A part that stands in many compounds goes with any; a taught pair is torn only between two of them (`t·h`).
    const isTorn = findBonds(word).has(at)
    // Neither counts for more than 2, so that both are some part.
    if (first + Math.min(last, 2) >= (isTorn ? STRONGEST : STRONG))
      return { at, isSure: last === SURE && first === 2 && !isTorn }
  }
  return undefined
}

/** `herdsman`, `swordswoman`: of whom there are too few in the dictionary to tell. */
const PEOPLE = /^([a-z]{3,})s(?:man|men|woman|women)$/

const LEAST = 3
const STRONG = 3
const STRONGEST = 4
const SURE = 3

const toGrade = (word: string, lexicon: Lexicon): number => lexicon.parts.get(lexicon.indexOf(word)) ?? 0
