// The words inside a switch comment: `battledore ignore no-numeral "10" -- the bus has a number`.

import { findNearest } from '../../nearest.ts'
import { toProblemText } from '../../problem/index.ts'
import type { Range, StoryComment } from '../../story/types.ts'
import { findNearestRule, isLikeRule, toUnknownRule } from '../rule-names.ts'

export const VERBS = ['ignore', 'ignore-line', 'disable', 'enable', 'disable-file'] as const
type Verb = (typeof VERBS)[number]

/** A rule id or a quoted word, with its place in the source. */
export interface Argument extends Range {
  readonly value: string
}

export interface Switch extends Range {
  readonly verb: Verb
  /** The messages of these rules; of all where there are none. */
  readonly rules: readonly Argument[]
  /** Messages about these words; about all where there are none. */
  readonly words: readonly Argument[]
  readonly reason: string | undefined
  readonly comment: StoryComment
}

/** A switch that does not say what was meant. */
export interface SwitchProblem extends Range {
  readonly rule: 'no-unknown-switch' | 'no-unused-switch'
  readonly message: string
  readonly expected: readonly string[]
}

interface Token extends Range {
  readonly text: string
  readonly quoted: boolean
}

// What other linters call the same thing.
const OTHER_VERBS: Readonly<Record<string, Verb>> = {
  'disable-line': 'ignore-line',
  'disable-next': 'ignore',
  'disable-next-line': 'ignore',
  'enable-file': 'enable',
  'ignore-end': 'enable',
  'ignore-file': 'disable-file',
  'ignore-next': 'ignore',
  'ignore-next-line': 'ignore',
  'ignore-start': 'disable',
  off: 'disable',
  on: 'enable',
  skip: 'ignore',
}

const TOKEN = /"([^"]*)"|“([^”]*)”|'([^']*)'|‘([^’]*)’|[^\s,"“”]+/gu

/** Nothing where the comment is not meant for us. */
export function readSwitch(
  comment: StoryComment,
  ruleIds: readonly string[],
): { readonly found?: Switch; readonly problems: readonly SwitchProblem[] } {
  const { tokens, reason } = toTokens(comment)
  const [name, verbToken, ...rest] = tokens
  if (!name || name.quoted || !isOurs(name, verbToken)) return { problems: [] }
  const at = { start: comment.start, end: comment.end }
  if (name.text !== 'battledore') return { problems: [toNameProblem(name)] }
  const verb = VERBS.find((one) => one === verbToken?.text)
  if (!verb) return { problems: [toVerbProblem(verbToken ?? name, verbToken === undefined)] }
  const words = rest.filter(({ quoted }) => quoted)
  const [rules, unknown] = partition(rest, ruleIds)
  const problems = unknown.map((token) => toRuleProblem(token, ruleIds))
  // A switch that names only rules that do not exist must not silence all of them.
  if (unknown.length > 0 && rules.length === 0) return { problems }
  return {
    found: { ...at, verb, reason, comment, rules: rules.map(toArgument), words: words.map(toArgument) },
    problems,
  }
}

function toTokens(comment: StoryComment): { readonly tokens: readonly Token[]; readonly reason: string | undefined } {
  // `battledore-ignore` and `battledore: ignore` are read as `battledore ignore`.
  const value = comment.value.replace(/^(battledore)[-:]/, '$1 ')
  const tokens: Token[] = []
  for (const match of value.matchAll(TOKEN)) {
    // Some editors make a dash of `--`.
    if (/^(?:--+|[–—])$/.test(match[0])) {
      return { tokens, reason: value.slice(match.index + match[0].length).trim() || undefined }
    }
    const inner = match[1] ?? match[2] ?? match[3] ?? match[4]
    const start = comment.valueStart + match.index
    tokens.push({ text: inner ?? match[0], quoted: inner !== undefined, start, end: start + match[0].length })
  }
  return { tokens, reason: undefined }
}

/** The name, or a misspelt name before one of our verbs. */
function isOurs(name: Token, verb: Token | undefined): boolean {
  if (name.text === 'battledore') return true
  const isVerb = VERBS.some((one) => one === verb?.text)
  return isVerb && findNearest(name.text, ['battledore']) !== undefined
}

function partition(tokens: readonly Token[], ruleIds: readonly string[]): readonly [Token[], Token[]] {
  const bare = tokens.filter(({ quoted }) => !quoted)
  const isRule = ({ text }: Token): boolean => ruleIds.includes(text)
  return [bare.filter(isRule), bare.filter((token) => !isRule(token))]
}

function toArgument({ text, start, end }: Token): Argument {
  return { value: text, start, end }
}

function toProblem({ start, end }: Range, message: string, nearest: string | undefined): SwitchProblem {
  const hint = nearest ? ` Did you mean \`${nearest}\`?` : ''
  return { rule: 'no-unknown-switch', start, end, message: message + hint, expected: nearest ? [nearest] : [] }
}

function toNameProblem(name: Token): SwitchProblem {
  return toProblem(name, `\`${name.text}\` switches nothing.`, 'battledore')
}

function toVerbProblem(token: Token, isMissing: boolean): SwitchProblem {
  const all = `${VERBS.slice(0, -1).join(', ')} or ${VERBS.at(-1)}`
  if (isMissing) return toProblem(token, `This switch does not say what to do: ${all}.`, undefined)
  const nearest = OTHER_VERBS[token.text] ?? findNearest(token.text, VERBS)
  const message = `\`${token.text}\` is not something a switch can do.`
  return toProblem(token, nearest ? message : `${message} It can be ${all}.`, nearest)
}

function toRuleProblem(token: Token, ruleIds: readonly string[]): SwitchProblem {
  const nearest = findNearestRule(token.text, ruleIds)
  const isWord = nearest === undefined && !isLikeRule(token.text)
  const message = isWord
    ? `There is no rule \`${token.text}\`. Put a word in quotes: "${token.text}".`
    : toProblemText(toUnknownRule(token.text, ruleIds))
  const { start, end } = token
  return { rule: 'no-unknown-switch', start, end, message, expected: nearest ? [nearest] : [] }
}
