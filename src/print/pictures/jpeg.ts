// Reads a JPEG by its markers, as ITU-T T.81 has them: its size, how it is turned, and whether it is whole.

import { type Result, succeed } from '../../problem/index.ts'
import type { Picture } from '../sheet.ts'
import { toBadPicture } from './bad-picture.ts'

const START_OF_SCAN = 0xda
const END = 0xd9
const EXIF = 0xe1

/** Frames that say the size; DHT, JPG and DAC have numbers in the same row. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)

export function readJpeg(bytes: Uint8Array): Result<Picture> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let size: readonly [width: number, height: number] | undefined
  let isTurned = false
  let at = 2
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0
    if (marker === 0xff) {
      at++
      continue
    }
    const end = at + 2 + view.getUint16(at + 2)
    if (end > bytes.length) break
    if (isFrame(marker)) size = [view.getUint16(at + 7), view.getUint16(at + 5)]
    if (marker === EXIF && isTurnedByExif(bytes.subarray(at + 4, end))) isTurned = true
    if (marker === START_OF_SCAN) {
      if (!size || size[0] === 0 || size[1] === 0) break
      if (!hasEnd(bytes, end)) return toBadPicture('is broken: its end is missing')
      const [width, height] = isTurned ? [size[1], size[0]] : size
      return succeed({ kind: 'jpeg', bytes, width, height })
    }
    at = end
  }
  return toBadPicture('is broken: a part of it is missing')
}

/** In the data of a scan no 0xFF is followed by this number, so it is the true end and not that of a small picture inside. */
function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1))
    if (bytes[at + 1] === END) return true
  return false
}

/** Whether the camera was held on its side: the tag 0x0112 of the first directory is 5 to 8. */
function isTurnedByExif(segment: Uint8Array): boolean {
  if (String.fromCharCode(...segment.subarray(0, 4)) !== 'Exif' || segment.length < 16) return false
  const view = new DataView(segment.buffer, segment.byteOffset + 6, segment.byteLength - 6)
  const isLittle = view.getUint16(0) === 0x4949
  const start = view.getUint32(4, isLittle)
  if (start + 2 > view.byteLength) return false
  const entries = view.getUint16(start, isLittle)
  for (let entry = 0; entry < entries; entry++) {
    const at = start + 2 + entry * 12
    if (at + 12 > view.byteLength) return false
    if (view.getUint16(at, isLittle) === 0x0112) return view.getUint16(at + 8, isLittle) >= 5
  }
  return false
}
