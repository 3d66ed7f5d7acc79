// Lines that a person types, one when it is asked for.

import type { Io } from './io.ts'

export interface LineReader {
  /** Without its end; undefined when there is no more. */
  next(): Promise<string | undefined>
  end(): Promise<void>
}

export function createLineReader(io: Pick<Io, 'stdin'>): LineReader {
  const decoder = new TextDecoder()
  let input: AsyncIterator<Uint8Array> | undefined
  let waiting = ''
  let isOver = false
  return {
    async next() {
      input ??= io.stdin()[Symbol.asyncIterator]()
      while (!waiting.includes('\n') && !isOver) {
        const { value, done } = await input.next()
        if (done) isOver = true
        else waiting += decoder.decode(value, { stream: true })
      }
      const at = waiting.indexOf('\n')
      if (at < 0) {
        const rest = waiting
        waiting = ''
        return rest === '' ? undefined : rest
      }
      const line = waiting.slice(0, at).replace(/\r$/, '')
      waiting = waiting.slice(at + 1)
      return line
    },
    async end() {
      // So that the process does not wait for a terminal that stays open.
      await input?.return?.()
    },
  }
}
