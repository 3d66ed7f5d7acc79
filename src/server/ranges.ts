// Offsets of a story as the lines and characters of the protocol: from 0, in UTF-16 units, as a story has them too.

import type { Range } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { Message } from '../lint/types.ts'
import type { Range as Offsets } from '../story/types.ts'

export const toRange = (document: TextDocument, { start, end }: Offsets): Range => ({
  start: document.positionAt(start),
  end: document.positionAt(end),
})

/** From the first blamed letter to the last, else the word or what else the message is about. */
export function toBlamed({ start, end, letterRanges }: Message): Offsets {
  if (letterRanges.length === 0) return { start, end }
  return {
    start: Math.min(...letterRanges.map((range) => range.start)),
    end: Math.max(...letterRanges.map((range) => range.end)),
  }
}

/** Whether two ranges touch; a caret beside a word counts. */
export const isTouching = (one: Offsets, other: Offsets): boolean => one.start <= other.end && other.start <= one.end
