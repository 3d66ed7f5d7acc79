// `read`, whose past is spelt like its present: the step that looks for the tense.

import { hasHelper } from './clause.ts'
import type { Classes } from './evidence.ts'
import { findBefore, type Place } from './place.ts'
import { isSpoken } from './speech.ts'
import type { Tags } from './tagged.ts'
import { findContextTense, findJoinedTense, findTense, type Tense } from './tense.ts'
import type { Heteronym } from './types.ts'

/**
 * For `read`, the form of the tense that sentence and story show. Where its neighbours say nothing of its class, the clause
 * must hold no helper that could govern it (`did the children read`).
 */
export function findTenseForm(
  row: Heteronym,
  place: Place,
  classes: Classes | undefined,
  before: readonly (readonly string[])[] | undefined,
  tags?: Tags,
): Tense | undefined {
  if (row.word !== 'read' || (classes && !classes.includes('verb'))) return undefined
  if (isOrder(place)) return 'present'
  const joined = findJoinedTense(place, tags)
  if (joined) return joined
  if (!classes && hasHelper(place)) return undefined
  const own = findTense(place)
  const story = before && !isSpoken(place.words, place.index) ? findContextTense(before) : undefined
  return own && story && own !== story ? undefined : (own ?? story)
}

/** `Read with me`: a sentence does not begin with a past. */
function isOrder(place: Place): boolean {
  const before = findBefore(place)
  return before === undefined || before === '“'
}
