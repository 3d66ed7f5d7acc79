// Watches that what comes in is messages of the protocol, each behind a header with its length. After anything else nobody
// can tell where the next message starts, and a reader would wait for ever.

/** Takes the bytes as they come, and gives the start of what is no header; undefined while all is well. */
export type FrameCheck = (bytes: Uint8Array) => string | undefined

const HEADER_END = '\r\n\r\n'
const MOST_HEADER = 1000
/** A header that is not whole yet: the protocol knows `Content-Length` and `Content-Type`. */
const HEADER_SO_FAR = /^(?:content-\w+:[^\r\n]*\r\n)*(?:content-\w+:[^\r\n]*\r?|content-\w*|\r)?$/i
const LEAD = 'content-'
const LENGTH = /^content-length:[ \t]*(\d{1,9})[ \t]*\r$/im

const isHeaderSoFar = (header: string): boolean =>
  HEADER_SO_FAR.test(header) || LEAD.startsWith(header.slice(header.lastIndexOf('\n') + 1).toLowerCase())

export function createFrameCheck(): FrameCheck {
  let header = ''
  let bodyLeft = 0
  return (bytes) => {
    for (let at = 0; at < bytes.length; ) {
      const skipped = Math.min(bodyLeft, bytes.length - at)
      bodyLeft -= skipped
      at += skipped
      if (at === bytes.length) break
      header += String.fromCharCode(bytes[at++] ?? 0)
      if (header.endsWith(HEADER_END)) {
        const length = LENGTH.exec(header)?.[1]
        if (length === undefined) return header
        bodyLeft = Number(length)
        header = ''
      } else if (header.length > MOST_HEADER || !isHeaderSoFar(header))
        return header + String.fromCharCode(...bytes.subarray(at, at + 40))
    }
    return undefined
  }
}
