// The words of a checked story that a person may want to change, one by one.

import { hasCapital, toBareName } from '../lint/names.ts'
import type { Message } from '../lint/types.ts'
import type { Lines, Range } from '../story/index.ts'

/** One place to decide on. */
export interface Finding extends Range {
  readonly message: Message
  /** As the story has it. */
  readonly word: string
  /** What could stand there instead; empty where the word cannot be taken out without its marks, as in `s**hi**p`. */
  readonly suggestions: readonly string[]
  /** The name that it would be; undefined where it does not look like one. */
  readonly name: string | undefined
  /** Whether there is something to choose: another word, or a name that it may well be. */
  readonly isOpen: boolean
  /** The line it stands on, from 1, and the text of that line. */
  readonly line: number
  readonly lineText: string
  /** Where the word stands in that text. */
  readonly column: number
}

/** Faults of words that are likely to be names. At the start of a sentence any word has a capital. */
const NAME_REASONS: ReadonlySet<string> = new Set(['unlisted-name', 'unknown-word', 'guessed'])

/** In order of place. Messages about no one word are left out, and so are words that need neither another word nor a name. */
export function toFindings(messages: readonly Message[], source: string, lines: Lines): readonly Finding[] {
  const seen = new Set<number>()
  return messages.flatMap((message): Finding[] => {
    const { word, start, end, reason } = message
    if (word === undefined || reason === undefined || seen.has(start)) return []
    seen.add(start)
    const isWhole = source.slice(start, end) === word
    const suggestions = isWhole ? message.suggestions : []
    const name = hasCapital(word) ? toBareName(word) : undefined
    const lineStart = Math.max(source.lastIndexOf('\n', start - 1), source.lastIndexOf('\r', start - 1)) + 1
    const lineText = /^[^\r\n]*/.exec(source.slice(lineStart))?.[0] ?? ''
    return [
      {
        ...{ message, word, start, end, lineText },
        suggestions,
        name,
        isOpen: suggestions.length > 0 || (name !== undefined && NAME_REASONS.has(reason)),
        line: lines.toPoint(start).line,
        column: start - lineStart,
      },
    ]
  })
}
