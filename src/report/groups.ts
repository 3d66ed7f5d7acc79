// The same thing said of the same word on one page is said once, with all its places.

import type { Message } from '../lint/types.ts'

/** At least one message. */
export type Group = readonly [Message, ...Message[]]

type OpenGroup = [Message, ...Message[]]

/** Groups in order of their first places. */
export function toGroups(messages: readonly Message[]): readonly Group[] {
  const all: OpenGroup[] = []
  // Looked up by page and text as they are: to put a key together for each message takes longer than all else here.
  const pages = new Map<number, Map<string, OpenGroup[]>>()
  const small = new Map<string, string>()
  for (const message of messages) {
    let texts = pages.get(message.page)
    if (texts === undefined) pages.set(message.page, (texts = new Map()))
    let text = small.get(message.message)
    if (text === undefined) small.set(message.message, (text = message.message.toLowerCase()))
    const alike = texts.get(text)
    const group = alike?.find(([first]) => isSame(first, message))
    if (group) {
      group.push(message)
      continue
    }
    const made: OpenGroup = [message]
    all.push(made)
    if (alike) alike.push(made)
    else texts.set(text, [made])
  }
  return all
}

const isSame = (one: Message, other: Message): boolean =>
  one.rule === other.rule && (one.word ?? '').toLowerCase() === (other.word ?? '').toLowerCase()
