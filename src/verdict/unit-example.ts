// The example word for letters of a word, as tables show it: that of the correspondence by which a child will first read them.

import type { Pronunciation, Unit } from '../phonics/types.ts'
import { findFirstExample } from '../sequence/taught.ts'
import type { Sequence } from '../sequence/types.ts'
import { findReadingKeys } from './faults.ts'

/** `cake` for the `a` of `faces`, `pie` for the `ie` of `cried`; undefined where the sequence has none. */
export const findUnitExample = (
  unit: Unit,
  pronunciation: Pick<Pronunciation, 'units'>,
  sequence: Sequence,
): string | undefined => findFirstExample(sequence, findReadingKeys(unit, pronunciation))
