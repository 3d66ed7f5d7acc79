// Each rule as a unified plugin, and all of them as one, for pipelines that other people build.

import type { Root } from 'nlcst'
import type { Plugin } from 'unified'
import type { VFile } from 'vfile'
import { createStoryContext, type ReadingSettings } from '../lint/context.ts'
import { runRules } from '../lint/run.ts'
import type { Message, OptionValue, Rule, RuleSettings, Severity } from '../lint/types.ts'
import { createLines, storyFromTree } from '../story/index.ts'
import { readPresetOptions, readRuleOptions, valueOrThrow } from './options.ts'

/** What the plugins need to know beside the tree: who reads, and the story's own settings where it has some. */
export interface PluginReading extends ReadingSettings {
  /** The parsed front matter. */
  readonly frontMatter?: Readonly<Record<string, unknown>>
}

/** Options of one rule as a plugin: its own, a severity, and the reading where no `readingPlugin` came before. */
export interface RulePluginOptions {
  readonly reading?: PluginReading
  readonly severity?: Severity
  readonly [option: string]: OptionValue | PluginReading | undefined
}

export interface PresetOptions {
  readonly reading?: PluginReading
  readonly rules?: RuleSettings
}

declare module 'vfile' {
  interface DataMap {
    battledore: { readonly reading: PluginReading }
  }
}

/** Says, once for all rules of a pipeline, who reads: put it before them. */
export const readingPlugin: Plugin<[PluginReading], Root> = (reading) => (_, file) => {
  file.data.battledore = { reading }
}

/** One rule as a plugin. Each walks the tree by itself: to use many, take the preset. */
export function createRulePlugin(rule: Rule): Plugin<[RulePluginOptions?], Root> {
  return (options = {}) => {
    const { reading, ...given } = options
    const setting = valueOrThrow(readRuleOptions(rule, given))
    return (tree, file) => addMessages(tree, file, [rule], { [rule.id]: setting }, reading)
  }
}

/** Many rules as one plugin, in one walk. */
export function createPreset(rules: readonly Rule[]): Plugin<[PresetOptions?], Root> {
  return (options = {}) => {
    valueOrThrow(readPresetOptions(rules, { ...options }))
    return (tree, file) => addMessages(tree, file, rules, options.rules, options.reading)
  }
}

function addMessages(
  tree: Root,
  file: VFile,
  rules: readonly Rule[],
  settings: RuleSettings | undefined,
  given: PluginReading | undefined,
): void {
  const reading = given ?? file.data.battledore?.reading
  if (reading === undefined) {
    throw new Error(
      'Battledore needs to know who reads: put `readingPlugin` before the rules, or give `reading` in the options.',
    )
  }
  // A tree by `storyPlugin` holds the story that it was made of; one by another parser holds sentences only.
  const story = tree.data?.story ?? storyFromTree(tree, String(file))
  const context = createStoryContext(story, reading, reading.frontMatter)
  const lines = createLines(story.source)
  for (const message of runRules(context, rules, settings)) addMessage(file, message, lines)
}

/** An error is `fatal`, as in other linters built on vfile; `fatal: false` is a warning. */
function addMessage(file: VFile, message: Message, lines: ReturnType<typeof createLines>): void {
  const start = { ...lines.toPoint(message.start), offset: message.start }
  const end = { ...lines.toPoint(message.end), offset: message.end }
  const added = file.message(message.message, { place: { start, end }, ruleId: message.rule, source: 'battledore' })
  added.fatal = message.severity === 'error'
  added.url = message.url
  added.expected = [...message.suggestions]
  if (message.note !== undefined) added.note = message.note
  if (message.word !== undefined) added.actual = message.word
}
