// A word that holds a text back, with its first place, for a person and for other programs.

import type { HeldWord } from '../shelf/index.ts'
import { toPrintable, toTimes } from './text.ts'

/** `red once at 7:5 (pink-5)`; no step where none makes it readable. @param file what stands before the line, such as `book.md:` */
export function toHeldText({ word, times, readableAt, isOpen, line, column }: HeldWord, file = ''): string {
  const open = isOpen ? ', not settled' : ''
  const step = readableAt === null ? '' : ` (${readableAt}${open})`
  return `${toPrintable(word)} ${toTimes(times)} at ${file}${line}:${column}${step}`
}

export const OPEN_NOTE =
  'Not settled: the sentence does not tell which of its meanings the word has, and the step is that of the last of them.'

export const toHeldFields = ({ word, times, readableAt, isOpen, line, column }: HeldWord) => ({
  word,
  times,
  readableAt,
  line,
  column,
  ...(isOpen && { unsettled: true }),
})
