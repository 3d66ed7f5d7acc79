// Options of the plugins, checked when a pipeline is put together: a misspelt one would change nothing, without a word.

import { findNearestRule, toNoRuleMessage } from '../lint/rule-names.ts'
import { readRuleSetting } from '../lint/settings.ts'
import type { Rule, RuleSetting, RuleSettings } from '../lint/types.ts'
import { findNearest } from '../nearest.ts'

/**
 * The setting of one rule from the options of its plugin.
 * @throws TypeError that names the option that is wrong
 */
export function toRuleSetting(rule: Rule, given: Readonly<Record<string, unknown>>): RuleSetting {
  const isSet = ([, value]: readonly [string, unknown]): boolean => value !== undefined
  const { setting, problems } = readRuleSetting(rule, Object.fromEntries(Object.entries(given).filter(isSet)))
  const [first] = problems
  if (first === undefined) return setting
  const { key = '', message } = first
  if (!(key in rule.options) && findNearest(key, ['reading']) !== undefined) {
    throw new TypeError(`\`${rule.id}\` has no option \`${key}\`; did you mean \`reading\`?`)
  }
  throw new TypeError(message.includes(rule.id) ? message : `\`${rule.id}\`: ${message}`)
}

const PRESET_OPTIONS = ['reading', 'rules']

/** @throws TypeError that names the option, the rule or the rule's option that is wrong */
export function checkPresetOptions(rules: readonly Rule[], options: Readonly<Record<string, unknown>>): void {
  const unknown = Object.keys(options).find((name) => !PRESET_OPTIONS.includes(name))
  if (unknown !== undefined) {
    const nearest = findNearest(unknown, PRESET_OPTIONS)
    const hint = nearest === undefined ? 'it takes `reading` and `rules`.' : `did you mean \`${nearest}\`?`
    throw new TypeError(`The preset has no option \`${unknown}\`; ${hint}`)
  }
  for (const [id, setting] of Object.entries((options['rules'] ?? {}) as RuleSettings)) checkSetting(id, setting, rules)
}

function checkSetting(id: string, setting: unknown, rules: readonly Rule[]): void {
  const rule = rules.find((one) => one.id === id)
  if (rule === undefined) {
    const ids = rules.map((one) => one.id)
    throw new TypeError(toNoRuleMessage(id, findNearestRule(id, ids)))
  }
  if (setting === undefined) return
  const isMap = typeof setting === 'object' && setting !== null
  const { severity, options, ...rest } = (isMap ? setting : { [String(setting)]: true }) as RuleSetting
  const [wrong] = Object.keys(rest)
  if (wrong !== undefined) {
    throw new TypeError(`\`${id}\` is set by \`severity\` and \`options\`, not by \`${wrong}\`.`)
  }
  toRuleSetting(rule, { severity, ...options })
}
