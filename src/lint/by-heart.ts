// How a word of a story is written in a list of sight words: small, though a sentence begins with it.

import { toBareName } from '../usage/likely-names.ts'
import { isAlwaysCapital } from './capital-words.ts'
import type { StoryContext } from './types.ts'

/** `full` for `Full`; but `I`, a name that keeps its capital in mid-sentence, and `Monday`. */
export function toByHeart(text: string, story: Pick<StoryContext, 'likelyNames'>): string {
  const bare = toBareName(text)
  const isCapital = /^I(?:['’]|$)/.test(text) || isAlwaysCapital(bare) || story.likelyNames().has(bare)
  return isCapital ? text : text.toLowerCase()
}
