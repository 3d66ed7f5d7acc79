// Where a unit stands in its word: what the rules of an accent ask about.

import type { RawUnit } from '../raw.ts'

/** A unit in its word; `stem` is the word without its ending. */
export interface Place {
  readonly units: readonly RawUnit[]
  readonly at: number
  readonly words: readonly [word: string, stem: string]
}

/** Whether the word, or what is left of it without its endings, is in a set: `ask` for `asking`. */
export const isIn = (set: ReadonlySet<string>, place: Place): boolean =>
  place.words.some(
    (word) =>
      set.has(word) || ENDINGS.some((ending) => word.endsWith(ending) && set.has(word.slice(0, -ending.length))),
  )

const ENDINGS = ["'s", 's', 'es', 'ed', 'd', 'ing', 'er', 'ers', 'ly', 'y', 'ful', 'less', 'ter', 'able'] as const

/** The first sound of the next unit that says any; empty at the end. */
export const nextSound = ({ units, at }: Place): string =>
  units.slice(at + 1).find((unit) => unit.phones.length > 0)?.phones[0] ?? ''

export const previousSound = ({ units, at }: Place): string => {
  for (let k = at - 1; k >= 0; k--) {
    const phone = units[k]?.phones.at(-1)
    if (phone) return phone
  }
  return ''
}
