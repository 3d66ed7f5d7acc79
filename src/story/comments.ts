// HTML comments: where they stand, whether text shares their line, and which block comes next.

import type { Range, StoryComment } from './types.ts'

const comment = /<!--([\s\S]*?)-->/g

/** A comment before its next block is known. */
export type FoundComment = Omit<StoryComment, 'nextBlock'>

/** The comments in a stretch of HTML. */
export function findComments(source: string, start: number, end: number): FoundComment[] {
  return [...source.slice(start, end).matchAll(comment)].map((match) => {
    const from = start + match.index
    const inner = match[1] ?? ''
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
    while (next < blocks.length && (blocks[next]?.start ?? 0) < it.end) next++
    const block = blocks[next]
    return { ...it, nextBlock: block && { start: block.start, end: block.end } }
  })
}

/** Quote marks, list bullets and other comments are no text. */
function hasTextOnLine(source: string, from: number, to: number): boolean {
  const before = source.slice(lineStart(source, from), from)
  const after = source.slice(to, lineEnd(source, to))
  const lead = before.replace(/^\uFEFF?[\s>]*(?:[-*+]\s|\d+[.)]\s)*/, '')
  return `${lead} ${after}`.replace(comment, '').trim() !== ''
}

function lineStart(source: string, at: number): number {
  return Math.max(source.lastIndexOf('\n', at - 1), source.lastIndexOf('\r', at - 1), -1) + 1
}

function lineEnd(source: string, at: number): number {
  const found = /[\r\n]/g
  found.lastIndex = at
  return found.exec(source)?.index ?? source.length
}
