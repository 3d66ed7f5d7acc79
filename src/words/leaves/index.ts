// Where a word can go, each condition by its sign in the table of stand-ins.

import type { PlaceTest } from '../where.ts'
import { CLAUSES } from './clauses.ts'
import { DEEDS } from './deeds.ts'
import { DESCRIBING } from './describing.ts'

/** Where the word can go, by the sign in the table. */
export const LEAVES: Readonly<Record<string, PlaceTest>> = { ...DESCRIBING, ...DEEDS, ...CLAUSES }
