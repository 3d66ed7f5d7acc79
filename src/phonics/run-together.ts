// Two words run together for want of a space: `thedog`, `catand`. Neither is a word, nor a compound.

import type { Lexicon } from './lexicon/open.ts'

/** Little words that stand before or after another in nearly every sentence, and that seldom begin or end a name. */
const BEFORE: ReadonlySet<string> = new Set(['and', 'the', 'they', 'was', 'with', 'your'])
const AFTER: ReadonlySet<string> = new Set(['and', 'the', 'was', 'with', 'you', 'your'])
const LEAST = 3

/** The two words with a space between; undefined where the other part is no word of every day. */
export function findRunTogether(word: string, lexicon: Lexicon): string | undefined {
  const isEveryday = (part: string) => part.length >= LEAST && lexicon.parts.has(lexicon.indexOf(part))
  for (let at = LEAST; at <= word.length - LEAST; at++) {
    const [first, second] = [word.slice(0, at), word.slice(at)]
    if ((BEFORE.has(first) && isEveryday(second)) || (AFTER.has(second) && isEveryday(first)))
      return `${first} ${second}`
  }
  return undefined
}
