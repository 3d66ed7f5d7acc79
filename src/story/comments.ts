// HTML comments: where they stand, whether text shares their line, and which block comes next.

import type { Range, StoryComment } from './types.ts'

const comment = /<!--([\s\S]*?)-->/g

/** A comment before its next block is known. */
export type FoundComment = Omit<StoryComment, 'nextBlock'>

/** The comments in a stretch of HTML. */
export function findComments(source: string, start: number, end: number): FoundComment[] {
  return [...source.slice(start, end).matchAll(comment)].map((match) => {
    const from = start + match.index
    const inner = match[1] as string
    const lead = inner.length - inner.trimStart().length
    const to = from + match[0].length
    return {
      value: inner.trim(),
      valueStart: from + 4 + lead,
      inline: hasTextOnLine(source, from, to),
      start: from,
      end: to,
    }
  })
}

/** Give each comment the first block that starts after it. Both lists are in order of place. */
export function addNextBlocks(comments: readonly FoundComment[], blocks: readonly Range[]): StoryComment[] {
  let next = 0
  return comments.map((it) => {
    while ((blocks[next]?.start ?? Number.POSITIVE_INFINITY) < it.end) next++
    const block = blocks[next]
    return { ...it, nextBlock: block && { start: block.start, end: block.end } }
  })
}

/** No need to look further on either side of a comment: a line that is longer holds text there. */
const longestLine = 2000

/** Quote marks, list bullets and other comments are no text. */
function hasTextOnLine(source: string, from: number, to: number): boolean {
  const before = source.slice(Math.max(0, from - longestLine), from).split(/[\r\n]/)
  const [after] = source.slice(to, to + longestLine).split(/[\r\n]/)
  const lead = before.at(-1)?.replace(/^\uFEFF?[\s>]*(?:[-*+]\s|\d+[.)]\s)*/, '')
  return `${lead} ${after}`.replace(comment, '').trim() !== ''
}
