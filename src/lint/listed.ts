// Lists of the front matter that rules speak of: their words as written, and where each stands.

import type { FrontMatter, Range } from '../story/types.ts'
import type { StoryContext } from './types.ts'

export interface Listed {
  /** As written. */
  readonly text: string
  readonly at: Range
}

/** The items under a key, a YAML list or one line with commas; empty where the story has no such key. */
export function readListed(
  { frontMatter, story }: Pick<StoryContext, 'frontMatter' | 'story'>,
  key: string,
): readonly Listed[] {
  const value = frontMatter[key]
  const items = typeof value === 'string' ? value.split(',') : Array.isArray(value) ? value : []
  const texts = items.map((item) => String(item).trim()).filter((text) => text !== '')
  const place = story.frontMatter
  if (place === undefined) return []
  const findPlace = createPlaceFinder(place, key)
  return texts.map((text) => ({ text, at: findPlace(text) }))
}

/** Looks for one item after the other, so that `a` is not found in `make`; the whole front matter where it is written in some other way. */
function createPlaceFinder({ value, valueStart, start, end }: FrontMatter, key: string): (text: string) => Range {
  let from = value.search(new RegExp(`^${key}\\s*:`, 'mu'))
  if (from >= 0) from += key.length
  return (text) => {
    if (from < 0) return { start, end }
    const escaped = text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')
    const found = new RegExp(`(?<=^|[\\s,[\\]"':-])${escaped}(?=$|[\\s,\\]"'])`, 'mu').exec(value.slice(from))
    if (found === null) return { start, end }
    from += found.index + text.length
    const at = valueStart + from - text.length
    return { start: at, end: at + text.length }
  }
}
