// The cascade: defaults ← folders, the outermost first ← their overrides ← front matter ← flags.

import { findBelow } from '../files/index.ts'
import type { Rule, RuleSettings } from '../lint/types.ts'
import type { Sourced } from '../problem/index.ts'
import { isSame } from '../sorted.ts'
import type { ConfigChain } from './find.ts'
import type { Layer, ResolvedRule, RuleLayer, Settings } from './types.ts'

/** In most definitions nine words of ten must be readable; the page on settings says where the figure comes from. */
const DEFAULT_READABLE_SHARE = 0.9

export interface ResolveInput {
  readonly chain: ConfigChain
  /** As it was given to the finder of config files. */
  readonly storyPath: string
  readonly frontMatter?: Layer
  readonly flags?: Layer
  readonly rules: readonly Rule[]
  readonly defaultSequence: string
}

/**
 * A nearer layer wins key by key, and for rules option by option.
 * `names` and the lists of words add up: a story adds its own to those of its folder.
 */
export function resolveSettings(input: ResolveInput): Settings {
  const layers = [...toFolderLayers(input.chain, input.storyPath), input.frontMatter ?? {}, input.flags ?? {}]
  const findLast = <K extends keyof Layer>(key: K): Layer[K] | undefined =>
    layers.findLast((layer) => layer[key])?.[key]
  return {
    sequence: findLast('sequence') ?? toDefault(input.defaultSequence),
    step: findLast('step') ?? toDefault(undefined),
    accent: findLast('accent') ?? toDefault(undefined),
    pages: findLast('pages') ?? toDefault('auto'),
    countTitle: findLast('countTitle') ?? toDefault(true),
    countHeadings: findLast('countHeadings') ?? toDefault(true),
    reducedVowels: findLast('reducedVowels') ?? toDefault(undefined),
    readableShare: findLast('readableShare') ?? toDefault(DEFAULT_READABLE_SHARE),
    paper: findLast('paper') ?? toDefault('a4'),
    names: toUnion(layers.flatMap((layer) => layer.names ?? [])),
    sightWords: toUnion(layers.flatMap((layer) => layer.sightWords ?? [])),
    unfitWords: toUnion(layers.flatMap((layer) => layer.unfitWords ?? [])),
    fitWords: toUnion(layers.flatMap((layer) => layer.fitWords ?? [])),
    rules: withReadableShare(resolveRules(input.rules, layers), findLast('readableShare')),
  }
}

/** The rule that looks at the share, and its option. */
const SHARE_RULE = 'min-readable-share'

/** `readable share` is also what the rule on it asks for, unless the rule is told something of its own. */
function withReadableShare(rules: ResolvedRules, share: Sourced<number> | undefined): ResolvedRules {
  const rule = rules[SHARE_RULE]
  if (share === undefined || rule?.options.share?.origin !== 'default') return rules
  return { ...rules, [SHARE_RULE]: { ...rule, options: { ...rule.options, share } } }
}

function toDefault<T>(value: T): Sourced<T> {
  return { value, origin: 'default' }
}

/** What the config files say for one story, the weakest first. */
function toFolderLayers({ folders }: ConfigChain, storyPath: string): readonly Layer[] {
  return folders.flatMap(({ folder, files }) => {
    const below = findBelow(folder, storyPath)
    return files.flatMap((file) => [
      file.layer,
      ...file.overrides.filter((override) => below !== undefined && override.matches(below)).map(({ layer }) => layer),
    ])
  })
}

function toUnion(items: readonly Sourced<string>[]): readonly Sourced<string>[] {
  const byValue = new Map<string, Sourced<string>>()
  for (const item of items) if (!byValue.has(item.value)) byValue.set(item.value, item)
  return [...byValue.values()]
}

type ResolvedRules = Readonly<Record<string, ResolvedRule>>
type RuleLayers = NonNullable<Layer['rules']>

/** What was last asked: most stories say nothing of rules, and then the next is set as the one before. */
let last:
  | { readonly rules: readonly Rule[]; readonly said: readonly RuleLayers[]; readonly resolved: ResolvedRules }
  | undefined

function resolveRules(rules: readonly Rule[], layers: readonly Layer[]): ResolvedRules {
  const said = layers.flatMap(({ rules: ofLayer }) => (ofLayer === undefined ? [] : [ofLayer]))
  if (last?.rules === rules && isSame(last.said, said)) return last.resolved
  const resolved = Object.fromEntries(rules.map((rule) => [rule.id, resolveRule(rule, said)]))
  last = { rules, said, resolved }
  return resolved
}

function resolveRule(rule: Rule, layers: readonly RuleLayers[]): ResolvedRule {
  const said = layers.map((layer) => layer[rule.id]).filter((one): one is RuleLayer => one !== undefined)
  const options = Object.entries(rule.options).map(
    ([name, spec]) =>
      [name, said.findLast((one) => one.options[name])?.options[name] ?? toDefault(spec.default)] as const,
  )
  const severity = said.findLast((one) => one.severity)?.severity ?? toDefault(rule.severity)
  return { severity, options: Object.fromEntries(options) }
}

const ruleSettings = new WeakMap<ResolvedRules, RuleSettings>()

/** As the run over a story takes them; the same object for the same rules. */
export function toRuleSettings({ rules }: Pick<Settings, 'rules'>): RuleSettings {
  const known = ruleSettings.get(rules)
  if (known !== undefined) return known
  const made = makeRuleSettings(rules)
  ruleSettings.set(rules, made)
  return made
}

function makeRuleSettings(rules: ResolvedRules): RuleSettings {
  const entries = Object.entries(rules).map(([id, { severity, options }]) => {
    const values = Object.entries(options).map(([name, { value }]) => [name, value] as const)
    return [id, { severity: severity.value, options: Object.fromEntries(values) }] as const
  })
  return Object.fromEntries(entries)
}
