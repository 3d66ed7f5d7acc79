// Switches in comments: which messages they silence, and which of them say nothing or silence nothing.

import type { Range, Story } from '../../story/types.ts'
import type { Silenceable } from './reach.ts'
import { findReach, isAbout, isInReach, isOverlapping, isRuleOf, isWord } from './reach.ts'
import type { Argument, Switch, SwitchProblem } from './syntax.ts'
import { readSwitch } from './syntax.ts'

export type { SwitchProblem } from './syntax.ts'

interface Filtered<M> {
  readonly kept: readonly M[]
  /** With the reason that the switch gives. */
  readonly silenced: readonly { readonly message: M; readonly reason: string | undefined }[]
  /** Switches, or single rules and words of them, that silenced nothing (`no-unused-switch`). */
  readonly unused: readonly SwitchProblem[]
  /** Misspelt switches (`no-unknown-switch`). */
  readonly problems: readonly SwitchProblem[]
}

export interface Switches {
  readonly all: readonly Switch[]
  /**
   * Parts messages into kept and silenced. `ran` holds the ids of the rules that ran: a switch for a rule that did not
   * run is not called unused.
   */
  filter<M extends Silenceable>(messages: readonly M[], ran: readonly string[]): Filtered<M>
}

/**
 * Reads the switches of a story:
 * `<!-- battledore ignore -->` the next block · `ignore-line` its own line · `disable` until `enable` · `disable-file`.
 * Rule ids and words in quotes narrow them; what follows `--` is the reason.
 */
export function readSwitches(story: Story, ruleIds: readonly string[]): Switches {
  const all: Switch[] = []
  const problems: SwitchProblem[] = []
  for (const comment of story.comments) {
    const read = readSwitch(comment, ruleIds)
    if (read.found) all.push(read.found)
    problems.push(...read.problems)
  }
  const placed = all.map((one) => ({ one, reach: findReach(one, story) }))
  return { all, filter: (messages, ran) => ({ ...silence(messages, placed, ran), problems }) }
}

interface Placed {
  readonly one: Switch
  readonly reach: Range | undefined
}

function silence<M extends Silenceable>(messages: readonly M[], all: readonly Placed[], ran: readonly string[]) {
  const used = new Map<Switch, M[]>(all.map(({ one }) => [one, []]))
  const kept: M[] = []
  const silenced: { message: M; reason: string | undefined }[] = []
  if (all.length === 0) return { kept: messages, silenced, unused: [] }
  for (const message of messages) {
    const silencers = findSilencers(message, all)
    for (const one of silencers) used.get(one)?.push(message)
    if (silencers.length === 0) kept.push(message)
    else silenced.push({ message, reason: silencers.find(({ reason }) => reason)?.reason })
  }
  const unused = all.flatMap(({ one }, index) =>
    one.verb === 'enable' ? findIdleEnable(one, all.slice(0, index)) : findIdleParts(one, used.get(one) ?? [], ran),
  )
  return { kept, silenced, unused }
}

function findSilencers(message: Silenceable, all: readonly Placed[]): readonly Switch[] {
  const about = all.filter(({ one, reach }) => isInReach(message, reach) && isAbout(one, message)).map(({ one }) => one)
  const direct = about.filter((one) => !isRegion(one))
  // Of the regions before the message, the last that is about it decides.
  const region = about.findLast(isRegion)
  return region?.verb === 'disable' ? [...direct, region] : direct
}

function isRegion({ verb }: Switch): boolean {
  return verb === 'disable' || verb === 'enable'
}

function findIdleEnable(one: Switch, before: readonly Placed[]): readonly SwitchProblem[] {
  const isNeeded = before.some(({ one: other }) => other.verb === 'disable' && isOverlapping(one, other))
  return isNeeded ? [] : [toUnused(one, 'Nothing is disabled here that this switch could enable.')]
}

function findIdleParts(
  one: Switch,
  messages: readonly Silenceable[],
  ran: readonly string[],
): readonly SwitchProblem[] {
  const judged = ran.filter((rule) => isRuleOf(one, rule))
  if (judged.length === 0) return []
  if (messages.length === 0) {
    // Rules that did not run might have been silenced.
    const isWhole = one.rules.every(({ value }) => ran.includes(value))
    return isWhole
      ? [toUnused(one, toWholeText(one))]
      : one.rules.filter(({ value }) => ran.includes(value)).map(toIdlePart)
  }
  const rules = one.rules.filter(({ value }) => ran.includes(value) && !messages.some(({ rule }) => rule === value))
  const words = one.words.filter((word) => !messages.some((message) => isWord(word, message)))
  return [...rules, ...words].map(toIdlePart)
}

function toWholeText(one: Switch): string {
  const isAlone = one.verb === 'ignore-line' && !one.comment.inline
  const hint = isAlone ? ' It stands on a line of its own: `ignore` is for the next block.' : ''
  return `This switch silences nothing.${hint}`
}

function toIdlePart(part: Argument): SwitchProblem {
  return toUnused(part, `This switch silences nothing for \`${part.value}\`.`)
}

function toUnused({ start, end }: Argument | Switch, message: string): SwitchProblem {
  return { rule: 'no-unused-switch', start, end, message, expected: [] }
}
