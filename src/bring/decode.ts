// Bytes → text, in whichever of the usual ways they were written.

import type { Unreadable } from './types.ts'

export interface Decoded {
  readonly text: string
  /** Whether the way of writing had to be guessed. */
  readonly isGuessed: boolean
}

export function decodeText(bytes: Uint8Array): Decoded | Unreadable {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decode(bytes, 'utf-16le', false)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decode(bytes, 'utf-16be', false)
  if (bytes.includes(0)) return { unreadable: 'is not a text: it holds bytes that no text has.' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), isGuessed: false }
  } catch {
    // What older programs for Windows write; every byte means some letter there.
    return { text: toWindowsText(bytes), isGuessed: true }
  }
}

const decode = (bytes: Uint8Array, encoding: string, isGuessed: boolean): Decoded => ({
  text: new TextDecoder(encoding).decode(bytes),
  isGuessed,
})

/** The letters of bytes 80 to 9F (WHATWG Encoding Standard, windows-1252); no letter stands for itself. */
const HIGH = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ'

/** By hand, since Node 20 decodes windows-1252 as Latin-1: its `’` is a control character. */
const toWindowsText = (bytes: Uint8Array): string =>
  new TextDecoder('windows-1252')
    .decode(bytes)
    .replace(/[\x80-\x9f]/g, (letter) => HIGH[letter.charCodeAt(0) - 0x80] ?? letter)
