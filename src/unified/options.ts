// Options of the plugins, checked when a pipeline is put together: a misspelt one would change nothing, without a word.

import { toUnknownRule } from '../lint/rule-names.ts'
import { readRuleSetting, toUnknownOption } from '../lint/settings.ts'
import type { Rule, RuleSetting, RuleSettings } from '../lint/types.ts'
import { type Problem, type Result, succeed, toProblem, toProblemLine } from '../problem/index.ts'

/** @throws TypeError with the first problem: whoever wrote the options is a programmer, and calls a function */
export function valueOrThrow<Value>(result: Result<Value>): Value {
  if (result.ok) return result.value
  throw new TypeError(result.problems.slice(0, 1).map(toProblemLine).join())
}

/** The setting of one rule from the options of its plugin. */
export function readRuleOptions(rule: Rule, given: Readonly<Record<string, unknown>>): Result<RuleSetting> {
  const isSet = ([, value]: readonly [string, unknown]): boolean => value !== undefined
  const { setting, problems } = readRuleSetting(rule, Object.fromEntries(Object.entries(given).filter(isSet)))
  if (problems.length === 0) return succeed(setting)
  return { ok: false, problems: problems.map(({ key, ...problem }) => withReading(problem, key, rule)) }
}

/** A plugin takes the reading too, beside what the rule takes. */
const withReading = (problem: Problem, key: string | undefined, { id, options }: Rule): Problem =>
  problem.code === 'unknown-key' && key !== undefined && problem.expected.length === 0
    ? toUnknownOption(`\`${id}\``, key, [...Object.keys(options), 'severity', 'reading'])
    : problem

const PRESET_OPTIONS = ['reading', 'rules']

/** Options of the preset that are right, or what is wrong with them. */
export function readPresetOptions<Options extends Readonly<Record<string, unknown>>>(
  rules: readonly Rule[],
  options: Options,
): Result<Options> {
  const unknown = Object.keys(options).filter((name) => !PRESET_OPTIONS.includes(name))
  const settings = Object.entries((options['rules'] ?? {}) as RuleSettings)
  const problems = [
    ...unknown.map(toUnknownPresetOption),
    ...settings.flatMap(([id, setting]) => findSettingProblems(id, setting, rules)),
  ]
  return problems.length === 0 ? succeed(options) : { ok: false, problems }
}

function toUnknownPresetOption(name: string): Problem {
  const problem = toUnknownOption('The preset', name, PRESET_OPTIONS)
  return problem.expected.length > 0 ? problem : { ...problem, note: 'It takes `reading` and `rules`.' }
}

function findSettingProblems(id: string, setting: unknown, rules: readonly Rule[]): readonly Problem[] {
  const rule = rules.find((one) => one.id === id)
  if (rule === undefined) {
    const ids = rules.map((one) => one.id)
    return [toUnknownRule(id, ids)]
  }
  if (setting === undefined) return []
  const isMap = typeof setting === 'object' && setting !== null
  const { severity, options, ...rest } = (isMap ? setting : { [String(setting)]: true }) as RuleSetting
  const wrong = Object.keys(rest).map((key) =>
    toProblem({ code: 'unknown-key', message: `\`${id}\` is set by \`severity\` and \`options\`, not by \`${key}\`` }),
  )
  if (wrong.length > 0) return wrong
  const read = readRuleOptions(rule, { severity, ...options })
  return read.ok ? [] : read.problems
}
