// The card of a place, and what can be done there.

import type { Changed, Tried } from './shared.ts'

export type CardAnswer = Tried<Card>

export interface Card {
  readonly path: string
  readonly version: number
  /** The number of the place, as in the check of this version. */
  readonly place: number
  readonly page: number
  readonly word: string | null
  /** Why, in one or two sentences. */
  readonly message: string
  readonly note: string | null
  readonly readableAt: { readonly id: string; readonly title: string } | null
  /** Letters over example words; empty where the word has none that can be sounded out. */
  readonly letters: readonly Letters[]
  /** How often the word stands in the story. */
  readonly times: number
  /** In the order in which they are offered. */
  readonly fixes: readonly Fix[]
}

export interface Letters {
  readonly letters: string
  /** A word in which the sequence teaches these letters so; null where it teaches them nowhere. */
  readonly example: string | null
  /** Whether these are to blame. */
  readonly isBlamed: boolean
  readonly isSilent: boolean
}

/**
 * `everywhere` is there only where the word stands more than once and all its places can be changed. `keep` and `own` need a
 * reason or a word first: ask `fix`. `out` leaves the word out. `teach` changes the sequence file, never the story.
 */
export type Fix =
  | { readonly kind: 'replace'; readonly word: string; readonly change: Changed; readonly everywhere: Changed | null }
  | { readonly kind: 'out'; readonly word: string; readonly change: Changed }
  | { readonly kind: 'name'; readonly name: string; readonly change: Changed }
  | { readonly kind: 'heart'; readonly word: string; readonly change: Changed }
  | { readonly kind: 'keep' }
  | { readonly kind: 'own' }
  | { readonly kind: 'teach'; readonly what: string; readonly step: string; readonly change: Changed }

export type FixWish =
  | { readonly kind: 'keep'; readonly reason: string }
  | { readonly kind: 'own'; readonly word: string; readonly everywhere: boolean }

/** `told` says what is to be known of a word of one's own: that it cannot be read yet either. */
export type FixAnswer = Tried<{ readonly change: Changed; readonly told: string | null }>
