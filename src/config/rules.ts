// Reads `rules:`: a severity for each rule, or a severity and options, checked against what the rule says of itself.

import { toUnknownRule } from '../lint/rule-names.ts'
import { readRuleSetting } from '../lint/settings.ts'
import type { Rule } from '../lint/types.ts'
import type { Range } from '../story/types.ts'
import type { ReadContext } from './context.ts'
import { isEmpty, report, toSourced } from './context.ts'
import type { Entry, Tree } from './tree.ts'
import { toPlain } from './tree.ts'
import type { RuleLayer } from './types.ts'

export function readRules(tree: Tree, context: ReadContext): Readonly<Record<string, RuleLayer>> {
  const layers: Record<string, RuleLayer> = {}
  if (tree.kind !== 'map') {
    const message = '`rules` must be a list of `rule: off`, `rule: warning` or `rule: error`'
    report(context, tree, { code: 'bad-value', message })
    return layers
  }
  for (const entry of tree.entries) {
    const rule = context.rules.find(({ id }) => id === entry.key)
    if (!rule) reportUnknownRule(entry, context)
    else if (!isEmpty(entry)) layers[rule.id] ??= readRule(entry.value, rule, context)
  }
  return layers
}

function reportUnknownRule(entry: Entry, context: ReadContext): void {
  const ids = context.rules.map(({ id }) => id)
  report(context, entry.keyAt, toUnknownRule(entry.key, ids))
}

function readRule(node: Tree, rule: Rule, context: ReadContext): RuleLayer {
  // What is left empty is as if it were not there.
  const given = node.kind === 'map' ? { ...node, entries: node.entries.filter((entry) => !isEmpty(entry)) } : node
  const { setting, problems } = readRuleSetting(rule, toPlain(given))
  for (const { key, ...problem } of problems) report(context, findBlamed(given, key, rule), problem)
  const findPlace = (key: string): Tree => findEntry(given, key)?.value ?? given
  const options = Object.entries(setting.options ?? {}).map(
    ([name, value]) => [name, toSourced(value, findPlace(name), context)] as const,
  )
  const severity = setting.severity && toSourced(setting.severity, findPlace('severity'), context)
  return { ...(severity ? { severity } : {}), options: Object.fromEntries(options) }
}

/** The value, or the key where it is the key that is wrong. */
function findBlamed(node: Tree, key: string | undefined, rule: Rule): Range {
  const entry = key === undefined ? undefined : findEntry(node, key)
  if (!entry) return node
  return key === 'severity' || entry.key in rule.options ? entry.value : entry.keyAt
}

function findEntry(node: Tree, key: string): Entry | undefined {
  return node.kind === 'map' ? node.entries.find((entry) => entry.key === key) : undefined
}
