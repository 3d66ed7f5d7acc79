// JSON as bytes, for whoever writes much of it: a message's fixed parts are encoded once, and copied wherever it stands.

import type { CheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Lines } from '../story/lines.ts'
import { createBytes } from './bytes.ts'

export interface JsonBytes {
  /** How many bytes wait to be taken. */
  readonly size: number
  text(text: string): void
  /** The list of the JSON report, brackets included, as `JSON.stringify` writes it. */
  messages(checked: CheckedStory): void
  /** All that has been written since it was last called. */
  take(): Uint8Array
}

/** What a message says before and behind its place, commas included. */
interface Encoded {
  readonly of: Message
  readonly before: Uint8Array
  readonly behind: Uint8Array
  /** The same, and that nothing is offered: most that is written has no offer. */
  readonly rest: Uint8Array
}

export function createJsonBytes(): JsonBytes {
  const bytes = createBytes()
  const encoder = new TextEncoder()
  /** The same word of many places has one list of letters, so that list finds what was encoded. */
  const known = new WeakMap<Message['letters'], Encoded>()

  function find(message: Message): Encoded {
    const found = known.get(message.letters)
    if (found !== undefined && isSame(found.of, message)) return found
    const behind = toBehind(message)
    const made: Encoded = {
      of: message,
      before: encoder.encode(toBefore(message)),
      behind: encoder.encode(behind),
      rest: encoder.encode(behind + NO_OFFER),
    }
    known.set(message.letters, made)
    return made
  }

  /** What is said of a page or a sentence is said nowhere else, but the advice is the same. */
  let advice: { readonly of: Message; readonly behind: Uint8Array } | undefined

  function findBehind(message: Message): Uint8Array {
    if (advice !== undefined && message.letters.length === 0 && isSameBehind(advice.of, message)) return advice.behind
    const behind = encoder.encode(toBehind(message))
    if (message.letters.length === 0) advice = { of: message, behind }
    return behind
  }

  function place({ start, end, page }: Message, lines: Lines): void {
    const [from, to] = [lines.toPoint(start), lines.toPoint(end)]
    bytes.ascii('"line":')
    bytes.number(from.line)
    bytes.ascii(',"column":')
    bytes.number(from.column)
    bytes.ascii(',"endLine":')
    bytes.number(to.line)
    bytes.ascii(',"endColumn":')
    bytes.number(to.column)
    bytes.ascii(',"offset":')
    bytes.number(start)
    bytes.ascii(',"endOffset":')
    bytes.number(end)
    bytes.ascii(',"page":')
    bytes.number(page)
  }

  function write(message: Message, lines: Lines): void {
    const hasOffer = message.suggestions.length > 0 || message.canGo
    if (message.word === undefined) {
      bytes.text(toBefore(message))
      place(message, lines)
      bytes.add(findBehind(message))
      if (!hasOffer) bytes.ascii(NO_OFFER)
    } else {
      const { before, behind, rest } = find(message)
      bytes.add(before)
      place(message, lines)
      bytes.add(hasOffer ? behind : rest)
    }
    if (hasOffer) bytes.text(toOffer(message))
  }

  return {
    get size() {
      return bytes.size
    },
    text: bytes.text,
    messages({ messages, lines }) {
      bytes.ascii('[')
      for (const [at, message] of messages.entries()) {
        if (at > 0) bytes.ascii(',')
        write(message, lines)
      }
      bytes.ascii(']')
    },
    take: bytes.take,
  }
}

/** The fields without the brace that begins or ends them. */
const toInner = (fields: object): string => JSON.stringify(fields).slice(1, -1)

const toBefore = ({ rule, severity, message }: Message): string =>
  `{"rule":${JSON.stringify(rule)},"severity":"${severity}","message":${JSON.stringify(message)},`

const toBehind = ({ word, reason, letters, readableAt, note, url }: Message): string =>
  `,${toInner({ word: word ?? null, reason: reason ?? null, letters, readableAt, note: note ?? null, url })}`

const toOffer = ({ suggestions, canGo }: Pick<Message, 'suggestions' | 'canGo'>): string =>
  `,${toInner({ suggestions, leaveOut: canGo })}}`

const NO_OFFER = toOffer({ suggestions: [], canGo: false })

/** Whether two messages with one list of letters say the same, their places and offers aside. */
const isSame = (one: Message, other: Message): boolean =>
  one.rule === other.rule &&
  one.severity === other.severity &&
  one.message === other.message &&
  isSameBehind(one, other)

const isSameBehind = (one: Message, other: Message): boolean =>
  one.word === other.word &&
  one.reason === other.reason &&
  one.readableAt === other.readableAt &&
  one.note === other.note &&
  one.url === other.url
