// Where a unit stands in its word: on one range of letters, or on two.

import type { Span } from './types.ts'

interface Placed {
  readonly spans: readonly Span[]
}

export const startOf = ({ spans }: Placed): number => (spans[0] as Span)[0]

/** Where its first range ends: behind the `a` of `a_e`. */
export const firstEndOf = ({ spans }: Placed): number => (spans[0] as Span)[1]

export const endOf = ({ spans }: Placed): number => (spans.at(-1) as Span)[1]
