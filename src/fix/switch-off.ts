// A switch put before a block, with the reason of the one who keeps a word.

import { findBlock } from '../story/find-word.ts'
import type { Story } from '../story/types.ts'
import { type Edit, findTop, insert, toNewline } from './edit.ts'

/** Puts a switch before the block at an offset. Undefined where no block stands. */
export function switchOff(
  story: Story,
  offset: number,
  rule: string,
  word: string | undefined,
  reason = '',
): Edit | undefined {
  const block = findBlock(story, offset)
  if (!block) return undefined
  const { source } = story
  const lineStart = Math.max(source.lastIndexOf('\n', block.start - 1), source.lastIndexOf('\r', block.start - 1)) + 1
  const start = Math.max(lineStart, findTop(source))
  // In the same quote and at the same indent as the block, so that it stays where it is.
  const lead = /^[\s>]*/.exec(source.slice(start, block.start))?.[0] ?? ''
  const about = word === undefined || /["“”]|--/.test(word) ? '' : ` "${word}"`
  // Two dashes would end the reason, and with `>` the comment.
  const plain = reason.replace(/\s+/g, ' ').replaceAll(/-{2,}/g, '-').trim()
  const why = plain === '' ? '' : ` -- ${plain}`
  return insert(start, `${lead}<!-- battledore ignore ${rule}${about}${why} -->${toNewline(source)}`)
}
