// Bytes of a file as a text to write in; or to read only, or not at all, with the reason.

import { decodeText } from '../../bring/decode.ts'
import { decodeUtf8, toShownPath } from '../../files/index.ts'
import { type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import { type KeptText, openText, toFileText } from './line-ends.ts'

/** In UTF-16 units: a longer text would make each key slow, and no beginners' book is longer. */
const MOST_WRITTEN = 400_000

export interface OpenedText {
  readonly kept: KeptText
  /** Why it can only be read: writing it back would change bytes that nobody touched. */
  readonly locked?: Problem
}

export function openBytes(name: string, bytes: Uint8Array): Result<OpenedText> {
  const strict = decodeUtf8(bytes, name)
  if (!strict.ok) {
    const readable = decodeText(bytes)
    const [why] = strict.problems
    if ('unreadable' in readable || why === undefined || why.code !== 'binary') return strict
    const note = 'It can be read here. Save a copy to go on writing: the copy is UTF-8.'
    return succeed({ kept: openText(readable.text), locked: toProblem({ ...why, note }) })
  }
  const kept = openText(strict.value)
  if (kept.text.length <= MOST_WRITTEN) return succeed({ kept })
  const message = `${toShownPath(name)} is too long to write in: more than ${MOST_WRITTEN.toLocaleString('en')} characters`
  return succeed({ kept, locked: toProblem({ code: 'too-large', message, note: 'Part it into several stories.' }) })
}

/** Whether the bytes themselves may be written in. */
export function isWritable(name: string, bytes: Uint8Array): boolean {
  const opened = openBytes(name, bytes)
  return opened.ok && opened.value.locked === undefined
}

export const toBytes = (kept: KeptText): Uint8Array<ArrayBuffer> => new TextEncoder().encode(toFileText(kept))
