// Reads text files and standard input as strict UTF-8; what cannot be read is told in one line.

import { decodeUtf8, MAX_BYTES, toTooLarge } from '../../files/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem, toShownPath } from './file-problem.ts'

/** A byte order mark stays in the text, so that offsets are those of the file. `shown` is the path for messages. */
export function readTextFile(path: string, io: Io, shown: string = path): Result<string> {
  const read = readBytes(path, io, shown)
  return read.ok ? decodeUtf8(read.value, shown) : read
}

export async function readStdin(io: Io, shown = 'standard input'): Promise<Result<string>> {
  const read = await readStdinBytes(io, shown)
  return read.ok ? decodeUtf8(read.value, shown) : read
}

/** @param most how many bytes it may have */
export function readBytes(path: string, io: Io, shown: string = path, most = MAX_BYTES): Result<Uint8Array> {
  try {
    const status = io.fs.statSync(path)
    if (status.isDirectory())
      return fail({ code: 'unreadable-file', message: `${toShownPath(shown)} is a folder, not a file` })
    if (!status.isFile() && !status.isFIFO())
      return fail({ code: 'unreadable-file', message: `${toShownPath(shown)} is not a file of text` })
    if (status.size > most) return fail(toTooLarge(shown, status.size, most))
    return succeed(io.fs.readFileSync(path))
  } catch (error) {
    return fail(toFileProblem(shown, error))
  }
}

/** Stops reading where the input grows too large. */
export async function readStdinBytes(io: Io, shown = 'standard input', most = MAX_BYTES): Promise<Result<Uint8Array>> {
  const chunks: Uint8Array[] = []
  let size = 0
  try {
    for await (const chunk of io.stdin()) {
      size += chunk.length
      if (size > most) return fail(toTooLarge(shown, size, most))
      chunks.push(chunk)
    }
  } catch (error) {
    return fail(toFileProblem(shown, error))
  }
  return succeed(Buffer.concat(chunks))
}
