// Reads a PNG by its chunks, as ISO/IEC 15948 has them: its size, and whether each chunk is whole.

import { type Result, succeed } from '../../problem/index.ts'
import type { Picture } from '../sheet.ts'
import { toBadPicture } from './bad-picture.ts'

/** A picture with see-through parts is taken apart dot by dot: one of 12 million dots took 18 seconds. */
const MOST_WITH_ALPHA = 8_000_000
const MOST = 50_000_000

export function readPng(bytes: Uint8Array): Result<Picture> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const chunks = new Set<string>()
  let at = 8
  while (at + 12 <= bytes.length && !chunks.has('IEND')) {
    const length = view.getUint32(at)
    const end = at + 8 + length
    if (end + 4 > bytes.length) break
    if (toCrc(bytes.subarray(at + 4, end)) !== view.getUint32(end)) break
    chunks.add(String.fromCharCode(...bytes.subarray(at + 4, at + 8)))
    at = end + 4
  }
  if (!['IHDR', 'IDAT', 'IEND'].every((name) => chunks.has(name)))
    return toBadPicture('is broken: a part of it is missing')
  const [width, height] = [view.getUint32(16), view.getUint32(20)]
  const colourType = bytes[25] ?? 0
  const hasAlpha = colourType === 4 || colourType === 6 || (colourType === 3 && chunks.has('tRNS'))
  const most = hasAlpha ? MOST_WITH_ALPHA : MOST
  if (width === 0 || height === 0) return toBadPicture('is broken: it has no size')
  if (width * height > most) {
    const kind = hasAlpha ? ' with see-through parts' : ''
    return toBadPicture(
      `is too large to print: ${width} × ${height} dots${kind}`,
      'Save it smaller, 2000 dots wide at most, or as JPEG.',
    )
  }
  return succeed({ kind: 'png', bytes, width, height })
}

let table: Uint32Array | undefined

/** The check sum of a chunk: annex D of the standard. */
function toCrc(bytes: Uint8Array): number {
  table ??= Uint32Array.from({ length: 256 }, (_, number) => {
    let rest = number
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1
    return rest >>> 0
  })
  let sum = 0xffffffff
  for (const byte of bytes) sum = (table[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8)
  return (sum ^ 0xffffffff) >>> 0
}
