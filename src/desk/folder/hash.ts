// Versions of files whose bytes are all that is known of them.

import type { Version } from './types.ts'

export async function toVersion(bytes: Uint8Array): Promise<Version> {
  // A browser that takes a file for no safe place has no hashes; there nothing is shared with another program.
  const subtle = globalThis.crypto?.subtle as SubtleCrypto | undefined
  if (subtle === undefined) return `sum-${bytes.length}-${toSum(bytes)}`
  const digest = new Uint8Array(await subtle.digest('SHA-256', bytes.slice()))
  return `sha256-${Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('')}`
}

function toSum(bytes: Uint8Array): string {
  let [one, other] = [1, 0]
  for (const byte of bytes) {
    one = (one + byte) % 65_521
    other = (other * 31 + one) % 4_294_967_291
  }
  return `${one}-${other}`
}
