// The guesser taught from some of the dictionary's words alone, so that it can be asked about the others.

import { findAlignment, learnCosts } from '../../src/phonics/align.ts'
import type { Guess } from '../../src/phonics/guess/guess.ts'
import { CLOSE, type RowSet } from '../../src/phonics/lattice.ts'
import { LIMITS, learnModel } from '../build/guess-model.ts'
import type { DictionaryWord } from '../build/pronunciations.ts'

/** The bytes of a model with the limits of the lexicon's. @param rounds of learning what each correspondence costs */
export function teachGuesser(words: readonly DictionaryWord[], set: RowSet, rounds: number): Uint8Array {
  const firsts = words.flatMap(({ word, transcriptions: [first] }) => (first ? [{ word, ...first }] : []))
  const costs = learnCosts(set, firsts, rounds)
  const lessons = firsts.flatMap((entry) => {
    const found = findAlignment(set, entry, costs)
    return found ? [{ path: found.path, stress: entry.stress }] : []
  })
  return learnModel(lessons, set.rows, LIMITS)
}

export const toPhones = ({ path }: Guess, { rows }: RowSet): readonly string[] =>
  path.flatMap((id) => (id === CLOSE ? [] : (rows[id]?.phones ?? [])))
