// Where a word of the table of stand-ins can stand: conditions on the words around, each by its sign there.

import type { PlaceTest } from '../where.ts'
import { WHO } from '../who.ts'
import { ACTED_ON } from './acted-on.ts'
import { CLAUSES } from './clauses.ts'
import { HELPING } from './helping.ts'
import { SPEECH } from './speech.ts'
import { THINGS } from './things.ts'
import { WAYS } from './ways.ts'

/** Conditions of the table of stand-ins, by their sign there. */
export const CONDITIONS: Readonly<Record<string, PlaceTest>> = {
  ...WHO,
  ...HELPING,
  ...SPEECH,
  ...WAYS,
  ...ACTED_ON,
  ...THINGS,
  ...CLAUSES,
}
