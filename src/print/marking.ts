// Which letters of a word are printed in bold over a bar: those that are practised, or those that must be known by heart.

import type { CorrespondenceKey, Pronunciation, Unit, WordPronunciations } from '../phonics/types.ts'
import type { Knowledge } from '../sequence/types.ts'
import { judge } from '../verdict/index.ts'
import { type MarkedText, unmarked } from './lay/words.ts'

export type MarkWish = 'none' | 'practised' | 'by-heart'

export interface Marking {
  readonly wish: MarkWish
  readonly knowledge: Knowledge
  isPractised(unit: Unit): boolean
}

/** Marks a word as it is written. @param said how it is said there; the first way where nothing is known of that */
export function markWord(
  text: string,
  pronunciations: WordPronunciations,
  { wish, knowledge, isPractised }: Marking,
  said: Pronunciation | undefined = pronunciations.pronunciations[0],
): MarkedText {
  if (wish === 'none' || !said) return unmarked(text)
  const spans =
    wish === 'practised'
      ? said.units.filter(isPractised).flatMap((unit) => unit.spans)
      : findByHeart(pronunciations, knowledge)
  return { text, marked: joinSpans(spans) }
}

/** The letters of a sight word that do not sound out: what would be wrong with it if it had not been taught by heart. */
function findByHeart(pronunciations: WordPronunciations, knowledge: Knowledge): readonly (readonly [number, number])[] {
  if (judge(pronunciations, knowledge).kind !== 'sight') return []
  const verdict = judge(pronunciations, { ...knowledge, sightWords: new Set() })
  return verdict.readable ? [] : (verdict.reasons[0]?.letters ?? [])
}

/** In order, with no letter twice and neighbours in one. */
function joinSpans(spans: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const joined: [number, number][] = []
  for (const [from, to] of [...spans].sort((one, other) => one[0] - other[0])) {
    const last = joined.at(-1)
    if (last && from <= last[1]) last[1] = Math.max(last[1], to)
    else joined.push([from, to])
  }
  return joined
}

/** A test for the correspondences that a step brings. */
export const isOneOf =
  (keys: ReadonlySet<CorrespondenceKey>) =>
  ({ key, kind }: Unit): boolean =>
    kind === 'correspondence' && keys.has(key)
