// Splits a stream of bytes into lines, holding no more than one line at a time.

import { fail, type Result, succeed } from '../problem/index.ts'

export type Line = Result<string>

const NEWLINE = 0x0a

/**
 * The lines of each piece of the input as it comes, so that whoever reads knows when there is no more for now.
 * A line longer than `most` bytes is passed over and told; empty lines are passed over.
 */
export async function* readLines(chunks: AsyncIterable<Uint8Array>, most: number): AsyncGenerator<readonly Line[]> {
  let parts: Uint8Array[] = []
  let size = 0
  for await (const chunk of chunks) {
    const lines: Line[] = []
    let start = 0
    for (let end = chunk.indexOf(NEWLINE); end >= 0; end = chunk.indexOf(NEWLINE, start)) {
      if (size <= most) parts.push(chunk.subarray(start, end))
      lines.push(...toLine(parts, size + end - start, most))
      parts = []
      size = 0
      start = end + 1
    }
    size += chunk.length - start
    if (size <= most) parts.push(chunk.subarray(start))
    else parts = []
    if (lines.length > 0) yield lines
  }
  const last = toLine(parts, size, most)
  if (last.length > 0) yield last
}

const decoder = new TextDecoder('utf-8', { fatal: true })

/** None where it is empty. */
function toLine(parts: readonly Uint8Array[], size: number, most: number): readonly Line[] {
  if (size > most)
    return [fail({ code: 'too-large', message: `The line is longer than ${Math.floor(most / 1024 / 1024)} MB` })]
  try {
    const [first = new Uint8Array()] = parts
    const text = decoder.decode(parts.length > 1 ? Buffer.concat(parts) : first).trim()
    return text === '' ? [] : [succeed(text)]
  } catch {
    return [fail({ code: 'binary', message: 'The line is not UTF-8' })]
  }
}
