// The same thing said of the same word on one page is said once, with all its places.

import type { Message } from '../lint/types.ts'

/** At least one message. */
export type Group = readonly [Message, ...Message[]]

/** Groups in order of their first places. */
export function toGroups(messages: readonly Message[]): readonly Group[] {
  const groups = new Map<string, [Message, ...Message[]]>()
  for (const message of messages) {
    const key = `${message.page}\n${message.rule}\n${message.word ?? ''}\n${message.message}`.toLowerCase()
    const group = groups.get(key)
    if (group) group.push(message)
    else groups.set(key, [message])
  }
  return [...groups.values()]
}
