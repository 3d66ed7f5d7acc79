// What cures a word beside another one in its place: to allow it as a name, to know it by heart, to keep it as it is.

import { toStraight } from '../apostrophe.ts'
import { FRONT_MATTER, TEXT } from '../check/check-story.ts'
import type { Message } from '../lint/types.ts'
import { toBareName } from '../usage/likely-names.ts'
import { isAllowedName, REASON_CODES } from '../verdict/index.ts'

/** Faults that a word no longer has once it is known by heart. Nobody teaches a slip by heart. */
const CURED_BY_HEART: ReadonlySet<string> = new Set(REASON_CODES.filter((code) => code !== 'misspelt'))

/** Faults that a word no longer has once it is an allowed name. */
const CURED_BY_NAME: ReadonlySet<string> = new Set([...CURED_BY_HEART, 'guessed', 'unlisted-name'])

const SWITCH_RULES: ReadonlySet<string> = new Set(['no-unused-switch', 'no-unknown-switch'])

/** What is missing would cure nothing. */
interface Cures {
  /** To be listed under `names`. */
  readonly name: string | undefined
  /** To be listed under `sight words`. */
  readonly heart: string | undefined
  /** Whether a switch silences it. */
  readonly canBeKept: boolean
}

/** @param names that are allowed already */
export function findCures({ word, rule, reason = '' }: Message, names: readonly string[]): Cures {
  const bare = word === undefined ? '' : toBareName(word)
  const isName = isNameLike(bare) && CURED_BY_NAME.has(reason) && !isAllowedName(bare, names)
  const isHeart = CURED_BY_HEART.has(reason) || reason === 'unlisted-name'
  return {
    name: isName ? bare : undefined,
    heart: isHeart ? word?.toLowerCase() : undefined,
    canBeKept: rule !== FRONT_MATTER && rule !== TEXT && !SWITCH_RULES.has(rule),
  }
}

/** One capital, at the front: `Zub`, not `STOP`. `O'Hara` has two. */
const isNameLike = (word: string): boolean => /^(?:\p{Lu}')?\p{Lu}[^\p{Lu}]*\p{Ll}/u.test(toStraight(word))
