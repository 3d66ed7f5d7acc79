// What kind of picture some bytes or an address hold.

import type { BroughtPicture, NoteCode, PictureType } from './types.ts'

/** By the first bytes, never by the name. Undefined for kinds that no browser shows, as WMF and EMF. */
export function toPictureType(bytes: Uint8Array): PictureType | undefined {
  const starts = (...wanted: number[]): boolean => wanted.every((byte, at) => bytes[at] === byte)
  if (starts(0x89, 0x50, 0x4e, 0x47)) return 'png'
  if (starts(0xff, 0xd8, 0xff)) return 'jpg'
  if (starts(0x47, 0x49, 0x46, 0x38)) return 'gif'
  if (starts(0x52, 0x49, 0x46, 0x46) && bytes[8] === 0x57 && bytes[9] === 0x45) return 'webp'
  const head = new TextDecoder().decode(bytes.subarray(0, 1000))
  return /^\s*(?:<\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/.test(head) ? 'svg' : undefined
}

export function toInnerPicture(bytes: Uint8Array, alt: string): BroughtPicture | NoteCode {
  const type = toPictureType(bytes)
  return type === undefined ? 'picture-kind' : { alt: tidy(alt), source: undefined, content: { type, bytes } }
}

/** A picture by its address: `data:` holds it, a path names a file beside the text, and the web is never asked. */
export function toNamedPicture(source: string, alt: string): BroughtPicture | NoteCode {
  const data = /^data:[^,]*?(;base64)?,(.*)$/is.exec(source)
  if (data) return toInnerPicture(toBytes(data[2] ?? '', data[1] !== undefined), alt)
  if (source === '' || /^(?:[a-z][a-z0-9+.-]+:|\/\/)/i.test(source)) return 'picture-on-web'
  return { alt: tidy(alt), source: decode(source), content: undefined }
}

const tidy = (alt: string): string => alt.replace(/\s+/g, ' ').trim()

function decode(path: string): string {
  try {
    return decodeURIComponent(path)
  } catch {
    return path
  }
}

function toBytes(text: string, isBase64: boolean): Uint8Array {
  try {
    if (!isBase64) return new TextEncoder().encode(decodeURIComponent(text))
    return Uint8Array.from(atob(text.replace(/\s+/g, '')), (letter) => letter.charCodeAt(0))
  } catch {
    return new Uint8Array()
  }
}
