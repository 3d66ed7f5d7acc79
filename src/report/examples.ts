// The row of example words under a word that is explained.

import type { Pronunciation } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { findUnitExample } from '../verdict/index.ts'

/** An example for each unit of the word; undefined where the sequence has none. */
export const findUnitExamples = (pronunciation: Pronunciation, sequence: Sequence): readonly (string | undefined)[] =>
  pronunciation.units.map((unit) => findUnitExample(unit, pronunciation, sequence))
