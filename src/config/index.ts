// Configuration: files, front matter and flags in, every value with its origin out.

export type { ConfigChain, ConfigFinder } from './find.ts'
export { createConfigFinder, findIgnoring } from './find.ts'
export type { FlagKey, FlagProblem } from './flags.ts'
export { readFlags } from './flags.ts'
export { readFrontMatter } from './front-matter.ts'
export type { ReadText } from './load.ts'
export { CONFIG_NAMES } from './load.ts'
export { toProblemLine } from './place.ts'
export { resolveSettings, toRuleSettings } from './resolve.ts'
export type { SettingRow } from './show.ts'
export { toSettingRows } from './show.ts'
export type { Layer, Problem, Settings, Sourced, StorySettings } from './types.ts'
