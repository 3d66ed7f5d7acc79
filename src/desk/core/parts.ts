// Data files as bytes: fetched, decoded and unpacked, each when it is first needed.

import type { DeskHost } from './host.ts'
import type { Part } from './questions/data.ts'

/** Opened once, whoever asks. */
export type Opener = () => Promise<Uint8Array>

export function createOpener(part: Part, host: Pick<DeskHost, 'fetch'>): Opener {
  let opened: Promise<Uint8Array> | undefined
  return () => (opened ??= openPart(part, host))
}

async function openPart(part: Part, host: Pick<DeskHost, 'fetch'>): Promise<Uint8Array> {
  const bytes = await readPart(part, host)
  return part.packed === undefined ? bytes : unpack(bytes, part.packed)
}

function readPart(part: Part, host: Pick<DeskHost, 'fetch'>): Promise<Uint8Array> | Uint8Array {
  if ('bytes' in part) return part.bytes
  return 'address' in part ? host.fetch(part.address) : fromBase64(part.base64)
}

function fromBase64(text: string): Uint8Array {
  const letters = atob(text)
  const bytes = new Uint8Array(letters.length)
  for (let at = 0; at < letters.length; at++) bytes[at] = letters.charCodeAt(at)
  return bytes
}

/** Written by hand into the stream: in a worker of a page opened from a file, `Blob.stream()` never answers in WebKit. */
export async function unpack(bytes: Uint8Array, format: 'gzip' | 'deflate' | 'deflate-raw'): Promise<Uint8Array> {
  const stream = new DecompressionStream(format)
  const writer = stream.writable.getWriter()
  const written = writer.write(bytes as Uint8Array<ArrayBuffer>).then(() => writer.close())
  const chunks: Uint8Array[] = []
  const reader = stream.readable.getReader()
  for (let next = await reader.read(); !next.done; next = await reader.read()) chunks.push(next.value)
  await written
  return join(chunks)
}

function join(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}
