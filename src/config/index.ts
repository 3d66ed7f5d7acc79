// Configuration: files, front matter and flags in, every value with its origin out.

export type { ConfigChain, ConfigFinder } from './find.ts'
export { createConfigFinder, findIgnoring } from './find.ts'

export { readFlags } from './flags.ts'
export { readFrontMatter } from './front-matter.ts'

export { CONFIG_NAMES } from './load.ts'
export { resolveSettings, toRuleSettings } from './resolve.ts'

export { toSettingRows } from './show.ts'
export type { Layer, Settings, StorySettings } from './types.ts'
