// Two words run together for want of a space: `thedog`, `catand`. Neither is a word, nor a compound.

import type { Lexicon } from './lexicon/open.ts'

/** Little words that stand before or after another in nearly every sentence, and that seldom begin or end a name. */
const BEFORE: ReadonlySet<string> = new Set(['and', 'the', 'they', 'was', 'with', 'your'])
const AFTER: ReadonlySet<string> = new Set(['and', 'the', 'was', 'with', 'you', 'your'])
const LEAST = 3

/** Little words that stand before those of the second list: `onthe`, `letme`. */
const FIRST: ReadonlySet<string> = new Set(
  'all and are as at be but by can for from get got had has have he if in into is it let like of on out put saw she so that they to up was we were when will with you'.split(
    ' ',
  ),
)
const SECOND: ReadonlySet<string> = new Set(
  'and her him his it me my no she the them they this us was we you your'.split(' '),
)
/** Two of two letters are as likely a made word: `beme`. */
const LEAST_PAIR = 5

/** The two words with a space between; undefined where the other part is no word of every day. */
export function findRunTogether(word: string, lexicon: Lexicon): string | undefined {
  const isEveryday = (part: string) => part.length >= LEAST && lexicon.parts.has(lexicon.indexOf(part))
  const ofLittle = word.length < LEAST_PAIR ? undefined : cut(word, (one, two) => FIRST.has(one) && SECOND.has(two))
  return (
    ofLittle ?? cut(word, (one, two) => (BEFORE.has(one) && isEveryday(two)) || (AFTER.has(two) && isEveryday(one)))
  )
}

/** The first place to part the word where both sides are right. */
function cut(word: string, isRight: (first: string, second: string) => boolean): string | undefined {
  for (let at = 1; at < word.length; at++) {
    const [first, second] = [word.slice(0, at), word.slice(at)]
    if (isRight(first, second)) return `${first} ${second}`
  }
  return undefined
}
