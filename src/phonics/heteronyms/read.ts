// The step for rows with a past form spelt like the base: who reads, and when.

import type { Classes } from './evidence.ts'
import type { Place } from './place.ts'
import { findContextTense, findTense, hasHelper, isSpeech } from './tense.ts'
import type { Heteronym } from './types.ts'

/**
 * For `read`, the form of the tense that sentence and story show. Without evidence on its class the clause must hold no
 * helper that could govern it (`did the children read`).
 */
export function findTenseForm(
  row: Heteronym,
  place: Place,
  classes: Classes | undefined,
  before: readonly (readonly string[])[] | undefined,
): string | undefined {
  if (row.word !== 'read') return undefined
  if (classes && !classes.includes('verb')) return undefined
  if (!classes && hasHelper(place)) return undefined
  const own = findTense(place)
  if (own) return own
  return before && !isSpeech(place) ? findContextTense(before) : undefined
}
