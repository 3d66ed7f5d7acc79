// Lists of the front matter that rules speak of: their words as written, and where each stands.

import type { Listed, StoryContext } from './types.ts'

/**
 * The items under a key, a YAML list or one line with commas; empty where the story has no such key. Where only the values
 * of the front matter are known, as in a pipeline of other tools, each stands at the whole of it.
 */
export function readListed(
  { frontMatter, lists, story }: Pick<StoryContext, 'frontMatter' | 'lists' | 'story'>,
  key: string,
): readonly Listed[] {
  const found = lists[key]
  if (found !== undefined) return found
  const at = story.frontMatter
  if (at === undefined) return []
  const value = frontMatter[key]
  const items = typeof value === 'string' ? value.split(',') : Array.isArray(value) ? value : []
  const texts = items.map((item) => String(item).trim()).filter((text) => text !== '')
  return texts.map((text) => ({ text, at: { start: at.start, end: at.end } }))
}
