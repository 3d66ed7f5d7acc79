// Where a switch reaches: the next block, its line, a region or the whole file; and which messages it is about.

import { toStraight } from '../../apostrophe.ts'
import type { Range, Story } from '../../story/types.ts'
import type { Argument, Switch } from './syntax.ts'

/** What a switch needs to know of a message. */
export interface Silenceable extends Range {
  readonly rule: string
  readonly word?: string | undefined
}

/** Where a message must start to be silenced; for `disable` and `enable`, where their say begins. */
export function findReach(found: Switch, { source }: Story): Range | undefined {
  switch (found.verb) {
    case 'ignore':
      return found.comment.nextBlock
    case 'ignore-line':
      return toLines(found.comment, source)
    case 'disable-file':
      return { start: 0, end: source.length + 1 }
    case 'disable':
    case 'enable':
      return { start: found.end, end: source.length + 1 }
  }
}

/** The end counts for a message about an empty place, as at the end of a file. */
export function isInReach(message: Range, reach: Range | undefined): boolean {
  return reach !== undefined && message.start >= reach.start && message.start <= Math.max(reach.start, reach.end - 1)
}

/** The whole lines on which a range stands. */
function toLines({ start, end }: Range, source: string): Range {
  const after = source.indexOf('\n', end)
  return { start: source.lastIndexOf('\n', start - 1) + 1, end: after < 0 ? source.length : after }
}

/** Whether a switch is about a message: its rule is named, or none is; its word is named, or none is. */
export function isAbout(found: Switch, message: Silenceable): boolean {
  return (
    isRuleOf(found, message.rule) && (found.words.length === 0 || found.words.some((word) => isWord(word, message)))
  )
}

export function isRuleOf(found: Switch, rule: string): boolean {
  return found.rules.length === 0 || found.rules.some(({ value }) => value === rule)
}

/** Any case, unless written with a capital: `"Tam"` is the name only. */
export function isWord({ value }: Argument, { word }: Silenceable): boolean {
  if (word === undefined) return false
  const wanted = toStraight(value)
  const given = toStraight(word)
  return wanted === given || (wanted === wanted.toLowerCase() && wanted === given.toLowerCase())
}

/** Whether two switches can be about the same message. */
export function isOverlapping(one: Switch, other: Switch): boolean {
  const share = (these: readonly Argument[], those: readonly Argument[]): boolean =>
    these.length === 0 || those.length === 0 || these.some(({ value }) => those.some((that) => that.value === value))
  return share(one.rules, other.rules) && share(one.words, other.words)
}
