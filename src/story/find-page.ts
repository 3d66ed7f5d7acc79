// The page at an offset of a story.

import { findLastIndex } from '../sorted.ts'
import type { Page, Story } from './types.ts'

/** The number of the page that holds an offset; the first page for what stands before it, such as the front matter. */
export function findPageNumber({ pages }: Pick<Story, 'pages'>, offset: number): number {
  const at = findLastIndex(pages.length, (index) => (pages[index] as Page).start <= offset)
  return pages[at]?.number ?? 1
}
