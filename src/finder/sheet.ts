// A word bank for writing: what can be used at a step, by kind of word, as much as goes on one page.

import type { WordKind } from '../words/index.ts'
import { type FoundWord, findWords, type WordQuery } from './find.ts'
import type { Pool } from './pool.ts'

export interface SheetPart {
  readonly kind: WordKind
  /** In order of the alphabet. */
  readonly words: readonly FoundWord[]
  /** Whether there are more. */
  readonly more: boolean
}

export const KINDS = ['naming', 'doing', 'describing', 'little'] as const satisfies readonly WordKind[]

/** Nobody writes for small children with words that they do not know. */
const isForWriting = ({ facts, isSight }: FoundWord): boolean => facts.known > 0 || isSight

/** The most useful words of each kind. @param count how many words of each kind at most */
export function toSheet(pool: Pool, query: WordQuery, count: number): readonly SheetPart[] {
  return KINDS.filter((kind) => query.kinds === undefined || query.kinds.includes(kind)).map((kind) => {
    const { words, more } = findWords(pool, { ...query, kinds: [kind], count, order: 'alphabetical', forWriting: true })
    return { kind, words: words.filter(isForWriting), more }
  })
}
