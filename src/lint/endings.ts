// Endings in a teacher's words: which one a word has, and what it did to the word before it.

import { toStraight } from '../apostrophe.ts'
import type { Reason } from '../verdict/types.ts'
import { findChange, findEnding } from '../verdict/unit.ts'
import { toLettersText, toQuoted } from './wording.ts'

/** What an ending did to the word before it: the `nn` of `running`, the lost `e` of `baking`, the `i` of `cried`. */
export function findChangeText(reason: Reason | undefined): string | undefined {
  const { unit, code } = reason ?? {}
  if (code !== 'ending' || unit?.base === undefined || unit.kind === 'inflection') return undefined
  const change = findChange(unit.letters, unit.base, undefined)
  if (change === 'double') return `doubles its ${toQuoted(unit.base)}`
  if (change === 'drop-e') return 'drops its `e`'
  if (change === 'ie-to-y') return 'turns its `ie` into `y`'
  return 'turns its `y` into `i`'
}

/** The ending as a sequence writes it: `-ed`, `'s`. */
export function toEnding(word: string, reason: Reason | undefined): string {
  const known = reason?.unit && findEnding(reason.unit)
  if (known !== undefined) return known
  const plain = toStraight(toLettersText(word, reason?.letters ?? []).toLowerCase())
  return plain.startsWith("'") ? plain : `-${plain}`
}
