// Markdown → pages → sentences → words, each with its exact place in the source.

export { findPageNumber } from './find-page.ts'
export { storyFromTree } from './foreign-tree.ts'
export { remarkFrontmatter } from './front-matter.ts'
export { maxLength } from './guard.ts'
export { createLines, type Lines } from './lines.ts'
export { storyPlugin } from './plugin.ts'
export { readStory } from './read.ts'
export type * from './types.ts'
