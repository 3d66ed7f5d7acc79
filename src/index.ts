// The public API: the pure core, which runs in a browser too. What reads files lies in `battledore/node`.

export { rules } from '../rules/index.ts'
export * from '../rules/plugins.ts'
export { type CheckInput, checkStory, DEFAULT_SEQUENCE } from './check/check-story.ts'
export type { CheckedStory, UncheckedStory } from './check/result.ts'
export { withSuggestions } from './check/suggest.ts'
export {
  createPool,
  type FoundWord,
  type FoundWords,
  findWords,
  type ListReader,
  type Pool,
  proposeBox,
  proposeMixed,
  proposePairs,
  type WordFilters,
  type WordQuery,
} from './finder/index.ts'
export { createStoryContext, type ReadingSettings } from './lint/context.ts'
export { defineRule } from './lint/rule.ts'
export { runRules } from './lint/run.ts'
export type { Message, Rule, RuleSettings, Severity, StoryContext } from './lint/types.ts'
export { createPhonics, createSpelling, type Lexicon, openLexicon } from './phonics/index.ts'
export type * from './phonics/types.ts'
export { toProblemLine, toProblemText } from './problem/index.ts'
export type * from './problem/types.ts'
export { type BuiltInFiles, type BuiltIns, createBuiltIns } from './resources/built-ins.ts'
export { createEngines, type Engines } from './resources/engines.ts'
export type { Resources, SuggestPlace, WordHelp } from './resources/types.ts'
export { openWordFiles, type WordFileBytes, type WordFiles } from './resources/word-files.ts'
export { type OpenedWords, openWordHelp } from './resources/word-help.ts'
export { findStep, knowledgeAt, sequenceFromJson } from './sequence/index.ts'
export type * from './sequence/types.ts'
export { readStory, remarkFrontmatter, storyFromTree, storyPlugin } from './story/index.ts'
export type * from './story/types.ts'
export {
  createPreset,
  createRulePlugin,
  type PluginReading,
  type PresetOptions,
  type RulePluginOptions,
  readingPlugin,
} from './unified/plugin.ts'
export { judge, judgeInSequence, toDifferentFigures, toFigures } from './verdict/index.ts'
export type { Figures, JudgedWord, Reason, ReasonCode, Verdict } from './verdict/types.ts'
export { type Fitness, type Suggester, toCaseOf, type Wanted, type WordFacts } from './words/index.ts'
