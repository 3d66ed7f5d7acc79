// How messages name the letters of a word whose sound is missing: the very pair that the sequence teaches for them.

import type { Unit } from '../phonics/types.ts'
import { isSpelt } from '../sequence/correspondence.ts'
import type { Reason } from '../verdict/types.ts'

/** Letters as a sequence names them, and how they stand in the word. */
export interface Seen {
  readonly letters: string
  readonly key: string
  /**
   * `whole`: they can be seen in the word. `dropped`: but for their e, as in `baking`. `changed`: other letters stand there, as in `cried`.
   * `silent`: they are an e without work, as in `axe`.
   */
  readonly stand: 'whole' | 'dropped' | 'changed' | 'silent'
}

/** The pair to name: that by which the step that was found teaches the letters. */
export function toSeen(word: string, unit: Unit, { key = unit.key }: Pick<Reason, 'key'> = unit): Seen {
  const grapheme = key.slice(0, key.indexOf('='))
  if (grapheme === unit.letters.toLowerCase()) return { letters: unit.letters, key, stand: 'whole' }
  const [[start] = [0]] = unit.spans
  if (grapheme.endsWith('_e') && unit.base === undefined && /^[^aiou]*e$/i.test(unit.letters))
    return { letters: 'e', key, stand: 'silent' }
  if (isSpelt(word.slice(start).toLowerCase(), grapheme)) return { letters: grapheme, key, stand: 'whole' }
  return { letters: grapheme, key, stand: /[^i]e$/.test(grapheme) ? 'dropped' : 'changed' }
}
