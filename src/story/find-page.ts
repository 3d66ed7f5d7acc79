// The page at an offset of a story.

import type { Story } from './types.ts'

/** The number of the page that holds an offset; the first page for what stands before it, such as the front matter. */
export function findPageNumber({ pages }: Pick<Story, 'pages'>, offset: number): number {
  return pages.findLast(({ start }) => start <= offset)?.number ?? 1
}
