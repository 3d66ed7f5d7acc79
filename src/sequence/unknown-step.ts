// What is said where somebody names a step that a sequence does not have.

import { findNearest } from '../nearest.ts'
import type { Sequence } from './types.ts'

/**
 * `sequence … has no step …`, with the nearest step or all of them; the article before it is the caller's.
 * @param origin who named it: `set in --step`
 */
export function toStepUnknown(step: string, { name, steps }: Sequence, origin?: string): string {
  const ids = steps.map(({ id }) => id)
  const nearest = findNearest(step, ids)
  const hint = nearest ? `Did you mean \`${nearest}\`?` : `Its steps are ${ids.join(', ')}.`
  return `sequence \`${name}\` has no step \`${step}\`${origin === undefined ? '' : ` (${origin})`}. ${hint}`
}
