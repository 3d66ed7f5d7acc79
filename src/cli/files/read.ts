// Reads text files and standard input as strict UTF-8; what cannot be read is told in one line.

import { type Found, fail, type Result, succeed } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { toFileProblem, toShownPath } from './file-problem.ts'

/** A story has some kilobytes; this leaves room for a whole library in one file. */
export const MAX_BYTES = 10 * 1024 * 1024

/** A byte order mark stays in the text, so that offsets are those of the file. `shown` is the path for messages. */
export function readTextFile(path: string, io: Io, shown: string = path): Result<string> {
  const read = readBytes(path, io, shown)
  return read.ok ? decode(read.value, shown) : read
}

export async function readStdin(io: Io, shown = 'standard input'): Promise<Result<string>> {
  const read = await readStdinBytes(io, shown)
  return read.ok ? decode(read.value, shown) : read
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

/** As the finder of config files takes it: undefined where there is no such file. */
export function createTextReader(io: Io): (path: string) => Promise<Result<string> | undefined> {
  return async (path) => (io.fs.existsSync(path) ? readTextFile(path, io) : undefined)
}

export function decode(bytes: Uint8Array, shown: string): Result<string> {
  if (bytes.length > MAX_BYTES) return fail(toTooLarge(shown, bytes.length))
  const isUtf16 = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)
  if (isUtf16) return toBadText(`${toShownPath(shown)} is saved as UTF-16`, SAVE_AS_UTF_8)
  if (bytes.includes(0)) return toBadText(`${toShownPath(shown)} is not a text: it holds bytes that no text has`)
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes))
  } catch {
    return toBadText(`${toShownPath(shown)} is not UTF-8: see line ${findBadLine(bytes)}`, SAVE_AS_UTF_8)
  }
}

const SAVE_AS_UTF_8 = { note: 'Save it as UTF-8 and try again.' }

const toBadText = (message: string, more: { readonly note?: string } = {}): Result<string> =>
  fail({ code: 'binary', message, ...more })

/** The line of the first byte that is no UTF-8. */
function findBadLine(bytes: Uint8Array): number {
  const NEWLINE = 0x0a
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
  let line = 1
  for (let start = 0; start < bytes.length; line++) {
    const newline = bytes.indexOf(NEWLINE, start)
    const end = newline < 0 ? bytes.length : newline + 1
    try {
      decoder.decode(bytes.subarray(start, end))
    } catch {
      return line
    }
    start = end
  }
  return line
}

function toTooLarge(shown: string, bytes: number, most = MAX_BYTES): Found {
  const toMegabytes = (size: number): string => String(Math.ceil(size / 1024 / 1024))
  const message = `${toShownPath(shown)} is too large: ${toMegabytes(bytes)} MB, and the most is ${toMegabytes(most)} MB`
  return { code: 'too-large', message }
}
