// The same thing said of the same word on one page is said once, with all its places.

import type { Message } from '../lint/types.ts'

/** Groups in order of their first places; each has at least one message. */
export function toGroups(messages: readonly Message[]): readonly (readonly Message[])[] {
  const groups = new Map<string, Message[]>()
  for (const message of messages) {
    const key = `${message.page}\n${message.rule}\n${message.word?.toLowerCase() ?? ''}\n${message.message.toLowerCase()}`
    const group = groups.get(key)
    if (group) group.push(message)
    else groups.set(key, [message])
  }
  return [...groups.values()]
}
