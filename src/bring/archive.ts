// Opens the zip that a .docx or .odt file is, and turns away what is broken, locked or would fill the memory.

import { unzipSync } from 'fflate'
import type { Unreadable } from './types.ts'

export type Archive = Readonly<Record<string, Uint8Array>>

/** The most that the parts of a document may hold together when unpacked, in bytes. */
const MAX_UNPACKED = 200 * 1024 * 1024
/** The same for its text: a book of 1,000 pages has some 10 MB of it. */
const MAX_TEXT = 40 * 1024 * 1024

export const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3

/** The older writing programs' container; a .docx file with a password is one too. */
export const isCompound = (bytes: Uint8Array): boolean =>
  [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1].every((byte, at) => bytes[at] === byte)

export function openArchive(bytes: Uint8Array): Archive | Unreadable {
  let size = 0
  let isTooLarge = false
  try {
    const files = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (name.endsWith('/')) return false
        size += originalSize
        if (size > MAX_UNPACKED || (name.endsWith('.xml') && originalSize > MAX_TEXT)) isTooLarge = true
        return !isTooLarge
      },
    })
    return isTooLarge ? { unreadable: 'is too large: unpacked it would fill the memory.' } : files
  } catch {
    return { unreadable: 'is broken: it cannot be unpacked. Open it in your writing program and save it anew.' }
  }
}

export const toText = (bytes: Uint8Array | undefined): string => (bytes ? new TextDecoder().decode(bytes) : '')
