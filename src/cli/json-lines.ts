// Splits a stream of bytes into lines, holding no more than one line at a time.

import { fail, type Result, succeed } from '../problem/index.ts'

export type Line = Result<string>

const NEWLINE = 0x0a

/** A line longer than `most` bytes is passed over and told; empty lines are passed over. */
export async function* readLines(chunks: AsyncIterable<Uint8Array>, most: number): AsyncGenerator<Line> {
  let parts: Uint8Array[] = []
  let size = 0
  for await (const chunk of chunks) {
    let start = 0
    for (let end = chunk.indexOf(NEWLINE); end >= 0; end = chunk.indexOf(NEWLINE, start)) {
      if (size <= most) parts.push(chunk.subarray(start, end))
      const line = toLine(parts, size + end - start, most)
      if (line) yield line
      parts = []
      size = 0
      start = end + 1
    }
    size += chunk.length - start
    if (size <= most) parts.push(chunk.subarray(start))
    else parts = []
  }
  const line = toLine(parts, size, most)
  if (line) yield line
}

function toLine(parts: readonly Uint8Array[], size: number, most: number): Line | undefined {
  if (size > most)
    return fail({ code: 'too-large', message: `The line is longer than ${Math.floor(most / 1024 / 1024)} MB` })
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts)).trim()
    return text === '' ? undefined : succeed(text)
  } catch {
    return fail({ code: 'binary', message: 'The line is not UTF-8' })
  }
}
