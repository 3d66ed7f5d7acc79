// How a rule is set: options with their defaults filled in, and what is wrong with options that somebody wrote.

import { findNearest } from '../nearest.ts'
import { type Problem, toExpected, toProblem } from '../problem/index.ts'
import type { OptionSpecs, OptionValue, OptionValues, Rule, RuleOptionSpec, RuleSetting, Severity } from './types.ts'

const SEVERITIES = ['off', 'warning', 'error'] as const satisfies readonly Severity[]

type Given = Readonly<Record<string, OptionValue>>

const NOTHING: Given = {}

/** What each rule was last given, and its options then: stories of one folder give the very same. */
const lastOptions = new WeakMap<object, { readonly given: Given; readonly options: Given }>()

/** The value of every option that a rule names: given, else by default. */
export function toOptions<Specs extends OptionSpecs>(
  rule: { readonly options: Specs },
  given: Given = NOTHING,
): OptionValues<Specs> {
  let last = lastOptions.get(rule)
  if (last?.given !== given) {
    const entries = Object.entries(rule.options).map(([name, spec]) => [name, given[name] ?? spec.default])
    last = { given, options: Object.fromEntries(entries) }
    lastOptions.set(rule, last)
  }
  return last.options as OptionValues<Specs>
}

/** Without a place; `key` is to blame where it is not the whole setting. */
export interface SettingProblem extends Problem {
  readonly key?: string
}

/**
 * Reads the setting of one rule as a person writes it: a severity, or a map of options that may hold `severity`.
 * What is wrong is left out of the setting and told.
 */
export function readRuleSetting(
  rule: Pick<Rule, 'id' | 'options'>,
  value: unknown,
): { readonly setting: RuleSetting; readonly problems: readonly SettingProblem[] } {
  if (isSeverity(value)) return { setting: { severity: value }, problems: [] }
  if (!isMap(value)) {
    const message = `\`${rule.id}\` is set by ${toList(SEVERITIES)}, or by its options; this is ${toText(value)}`
    return { setting: {}, problems: [toBadValue(message, toNearestSeverity(value))] }
  }
  const { severity, ...given } = value
  const options: Record<string, OptionValue> = {}
  const problems: SettingProblem[] = []
  if (severity !== undefined && !isSeverity(severity)) {
    const message = `\`severity\` of \`${rule.id}\` is ${toList(SEVERITIES)}; this is ${toText(severity)}`
    problems.push({ key: 'severity', ...toBadValue(message, toNearestSeverity(severity)) })
  }
  for (const [key, option] of Object.entries(given)) {
    const problem = findOptionProblem(rule, key, option)
    if (problem === undefined) options[key] = option as OptionValue
    else problems.push({ key, ...problem })
  }
  return { setting: { ...(isSeverity(severity) ? { severity } : {}), options }, problems }
}

const toBadValue = (message: string, expected: readonly string[] = []): Problem =>
  toProblem({ code: 'bad-value', message, expected })

const toNearestSeverity = (given: unknown): readonly string[] =>
  toExpected(typeof given === 'string' ? findNearest(given, SEVERITIES) : undefined)

function findOptionProblem(rule: Pick<Rule, 'id' | 'options'>, name: string, value: unknown): Problem | undefined {
  const spec = Object.hasOwn(rule.options, name) ? rule.options[name] : undefined
  if (spec === undefined) return toUnknownOption(`\`${rule.id}\``, name, [...Object.keys(rule.options), 'severity'])
  return isValue(spec, value)
    ? undefined
    : toBadValue(`\`${name}\` of \`${rule.id}\` is ${toKind(spec)}; this is ${toText(value)}`)
}

/** @param owner whose options they are, as it begins the sentence */
export const toUnknownOption = (owner: string, name: string, known: readonly string[]): Problem =>
  toProblem({
    code: 'unknown-key',
    message: `${owner} has no option \`${name}\``,
    expected: toExpected(findNearest(name, known)),
  })

function isValue(spec: RuleOptionSpec, value: unknown): boolean {
  if (spec.type === 'strings') return Array.isArray(value) && value.every((item) => typeof item === 'string')
  if (spec.type === 'string') return typeof value === 'string' && (spec.choices?.includes(value) ?? true)
  if (spec.type === 'boolean') return typeof value === 'boolean'
  if (typeof value !== 'number' || !Number.isFinite(value)) return false
  return value >= (spec.minimum ?? -Infinity) && value <= (spec.maximum ?? Infinity)
}

/** What an option takes, in words, for messages and tables: `a number from 0 to 1`. */
export function toKind(spec: RuleOptionSpec): string {
  if (spec.type === 'boolean') return 'true or false'
  if (spec.type === 'strings') return 'a list of words'
  if (spec.type === 'string') return spec.choices === undefined ? 'a word' : toList(spec.choices)
  const { minimum, maximum } = spec
  if (minimum !== undefined && maximum !== undefined) return `a number from ${minimum} to ${maximum}`
  if (minimum !== undefined) return `a number, ${minimum} or more`
  return maximum === undefined ? 'a number' : `a number, ${maximum} or less`
}

function isSeverity(value: unknown): value is Severity {
  return SEVERITIES.some((severity) => severity === value)
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function toList(words: readonly string[]): string {
  return words
    .map((word) => `\`${word}\``)
    .join(words.length > 2 ? ', ' : ' or ')
    .replace(/, (?=[^,]*$)/u, ' or ')
}

function toText(value: unknown): string {
  return `\`${typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value))}\``
}
