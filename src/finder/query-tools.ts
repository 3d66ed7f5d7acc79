// What a query is read from, and with.

import type { Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Pool } from './pool.ts'

/** All as written; lists with commas. */
export interface WrittenQuery {
  readonly vowel?: string
  readonly first?: string
  readonly last?: string
  readonly with?: string
  readonly pattern?: string
  readonly lettersPattern?: string
  readonly length?: string
  readonly syllables?: string
  readonly rhymesWith?: string
  readonly family?: string
  readonly kind?: string
  readonly picture?: boolean
  readonly object?: boolean
  readonly known?: boolean
  readonly base?: boolean
  readonly newAtStep?: boolean
  readonly order?: string
  readonly seed?: string
  readonly count?: string
}

export interface QueryTools {
  readonly sequence: Sequence
  readonly phonics: Phonics
  readonly pool: Pool
}
