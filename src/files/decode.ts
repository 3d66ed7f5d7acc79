// Bytes of a file as text: strict UTF-8, or in one line why it is none.

import { type Found, fail, type Result, succeed } from '../problem/index.ts'
import { toShownPath } from './shown.ts'

/** A story has some kilobytes; this leaves room for a whole library in one file. */
export const MAX_BYTES = 10 * 1024 * 1024

/** A byte order mark stays in the text, so that offsets are those of the file. `shown` is the path for messages. */
export function decodeUtf8(bytes: Uint8Array, shown: string): Result<string> {
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

export function toTooLarge(shown: string, bytes: number, most = MAX_BYTES): Found {
  const toMegabytes = (size: number): string => String(Math.ceil(size / 1024 / 1024))
  const message = `${toShownPath(shown)} is too large: ${toMegabytes(bytes)} MB, and the most is ${toMegabytes(most)} MB`
  return { code: 'too-large', message }
}
