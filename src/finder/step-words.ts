// How many words each step of a sequence has for a book: what can be read there, what the step itself brings, and what kinds they are.

import type { Sequence, Step } from '../sequence/types.ts'
import { type FoundWord, findWords } from './find.ts'
import type { Pool } from './pool.ts'

/** Things that a picture can show, doing words, and all others. */
type BookKind = 'things' | 'doing' | 'others'

export interface StepWords {
  readonly step: Step
  /** Words that small children know, in their base form, that can be read at the step. */
  readonly words: number
  /** The kinds of those words. */
  readonly kinds: Readonly<Record<BookKind, number>>
  /** Those that the step itself makes readable, the most useful first. */
  readonly brings: readonly FoundWord[]
  /** Some of what can be read there: what the step brings first, then the most useful of each kind in turn. */
  readonly offers: readonly FoundWord[]
  /** Of what there is too little for a book; empty where there is enough. */
  readonly lacks: readonly Lack[]
}

export type Lack = BookKind | 'words' | 'brings'

/**
 * What a first book needs to choose from. Common practice, no source: a book of eight pages with a sentence of four to
 * six words each has some forty running words; with what comes back, fifteen to twenty different ones. Who writes it
 * chooses, so there should be twice as many: 40, of which 10 are things for the pictures and 5 say what is done. And the
 * step's own sounds have to come back in it, in at least 5 words.
 */
export const ENOUGH: Readonly<Record<'words' | 'things' | 'doing' | 'brings', number>> = {
  words: 40,
  things: 10,
  doing: 5,
  brings: 5,
}

const MOST_OFFERED = 12

/** @param pool of a reader at the last step of the sequence */
export function countStepWords(pool: Pool, sequence: Sequence): readonly StepWords[] {
  const found = findWords(pool, { known: true, base: true }).words
  const readable: FoundWord[] = []
  return sequence.steps.map((step) => {
    const brings = found.filter(({ readableAt }) => readableAt === step.id)
    readable.push(...brings)
    const kinds = countKinds(readable)
    const counts = { words: readable.length, things: kinds.things, doing: kinds.doing, brings: brings.length }
    // A step that brings a mark, a limit or words by heart is no subject of a book.
    const isSubject = step.adds.correspondences.length > 0
    const lacks = (['words', 'things', 'doing', 'brings'] as const).filter(
      (one) => counts[one] < ENOUGH[one] && (one !== 'brings' || isSubject),
    )
    return { step, words: readable.length, kinds, brings, offers: toOffers(brings, readable), lacks }
  })
}

function toBookKind({ kind, facts, shown }: FoundWord): BookKind {
  const canBeShown = shown === undefined ? facts.nameable !== 'no' : shown.picture !== 'no'
  if (kind === 'naming' && canBeShown) return 'things'
  return kind === 'doing' ? 'doing' : 'others'
}

function countKinds(words: readonly FoundWord[]): Record<BookKind, number> {
  const kinds = { things: 0, doing: 0, others: 0 }
  for (const word of words) kinds[toBookKind(word)]++
  return kinds
}

/** What the step brings, then of what came before a thing, a doing word and another in turn. */
function toOffers(brings: readonly FoundWord[], readable: readonly FoundWord[]): readonly FoundWord[] {
  const before = readable.filter((word) => !brings.includes(word))
  const groups = (['things', 'doing', 'others'] as const).map((kind) =>
    before.filter((word) => toBookKind(word) === kind),
  )
  const inTurn = Array.from({ length: MOST_OFFERED }, (_, at) => groups.flatMap((group) => group[at] ?? [])).flat()
  return [...brings, ...inTurn].slice(0, MOST_OFFERED)
}
