// The words of a checked story that a person may want to change, one by one.

import { hasCapital } from '../letter-kinds.ts'
import type { Message } from '../lint/types.ts'
import type { Lines, Range, Story } from '../story/index.ts'
import { toBareName } from '../usage/likely-names.ts'
import type { Edit } from './edit.ts'
import { createSlots, type Slot, takeOut } from './put-in.ts'

/** One place to decide on: the stretch of source that another word would take. */
export interface Finding extends Range {
  readonly message: Message
  /** As the story has it. */
  readonly word: string
  /** What could stand there instead. */
  readonly suggestions: readonly string[]
  /** What takes the word out, where the sentence does without it. */
  readonly out: Edit | undefined
  /** Where another word goes; undefined where marks reach beyond the word, so that none can be put in: `**The b**oat`. */
  readonly slot: Slot | undefined
  /** The name that it would be; undefined where it does not look like one. */
  readonly name: string | undefined
  /** The line it stands on, from 1, and the text of that line. */
  readonly line: number
  readonly lineText: string
  /** Where the word stands in that text. */
  readonly column: number
}

/** Faults of words that are likely to be names. At the start of a sentence any word has a capital. */
const NAME_REASONS: ReadonlySet<string> = new Set(['unlisted-name', 'unknown-word', 'unsure', 'guessed'])

/**
 * In order of place. Messages about no one word are left out.
 * @param isWord whether the dictionary has a lower-case word as more than a name; without it, a word that only begins
 * sentences is taken for no name
 */
export function toFindings(
  messages: readonly Message[],
  story: Story,
  lines: Lines,
  isWord: (word: string) => boolean = () => true,
): readonly Finding[] {
  const seen = new Set<number>()
  const { source } = story
  const findSlot = createSlots(story)
  return messages.flatMap((message): Finding[] => {
    const { word, reason } = message
    if (word === undefined || reason === undefined || seen.has(message.start)) return []
    seen.add(message.start)
    const slot = findSlot(message.start)
    const { start, end } = slot ?? message
    const suggestions = slot ? message.suggestions : []
    const bare = hasCapital(word) ? toBareName(word) : undefined
    const isName = bare !== undefined && (NAME_REASONS.has(reason) || !isWord(bare.toLowerCase()))
    const lineStart = Math.max(source.lastIndexOf('\n', start - 1), source.lastIndexOf('\r', start - 1)) + 1
    const lineText = /^[^\r\n]*/.exec(source.slice(lineStart))?.[0] ?? ''
    return [
      {
        ...{ message, word, start, end, lineText, suggestions, slot },
        out: slot && message.canGo ? takeOut(slot, source) : undefined,
        name: isName ? bare : undefined,
        line: lines.toPoint(start).line,
        column: start - lineStart,
      },
    ]
  })
}
