// Reads a PNG by its chunks, as ISO/IEC 15948 has them: its size, whether each chunk is whole, and whether the dots can be read.

import { Unzlib } from 'fflate'
import { type Result, succeed } from '../../problem/index.ts'
import type { Picture } from '../sheet.ts'
import { toBadPicture } from './bad-picture.ts'

/** A picture with see-through parts is taken apart dot by dot: one of 12 million dots took 18 seconds. */
const MOST_WITH_ALPHA = 8_000_000
const MOST = 50_000_000

export function readPng(bytes: Uint8Array): Result<Picture> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const chunks = new Set<string>()
  const data: Uint8Array[] = []
  let at = 8
  while (at + 12 <= bytes.length && !chunks.has('IEND')) {
    const length = view.getUint32(at)
    const end = at + 8 + length
    if (end + 4 > bytes.length) break
    if (toCrc(bytes.subarray(at + 4, end)) !== view.getUint32(end)) break
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8))
    chunks.add(name)
    if (name === 'IDAT') data.push(bytes.subarray(at + 8, end))
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
  const wanted = toDataSize(width, height, bytes)
  if (wanted === undefined || countUnpacked(data) < wanted) return toBadPicture('is broken: its dots cannot be read')
  return succeed({ kind: 'png', bytes, width, height })
}

/** Samples of a dot by the type of its colour. */
const SAMPLES: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 }

/** First column and row of each of the seven passes of an interlaced picture, and the steps from dot to dot. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const

/** Bytes of all rows, each with one for its filter; undefined where there is no such type of colour. */
function toDataSize(width: number, height: number, bytes: Uint8Array): number | undefined {
  const [depth = 0, colourType = 0, , , interlace = 0] = bytes.subarray(24, 29)
  const samples = SAMPLES[colourType]
  if (samples === undefined) return undefined
  const toSize = (columns: number, rows: number): number =>
    columns > 0 && rows > 0 ? rows * (1 + Math.ceil((columns * samples * depth) / 8)) : 0
  if (interlace === 0) return toSize(width, height)
  return PASSES.reduce((sum, [x, y, across, down]) => {
    return sum + toSize(Math.ceil((width - x) / across), Math.ceil((height - y) / down))
  }, 0)
}

/** How many bytes come out, read piece by piece so that a large picture takes no room; fewer where the data is broken. */
function countUnpacked(data: readonly Uint8Array[]): number {
  let size = 0
  const reader = new Unzlib((piece) => {
    size += piece.length
  })
  try {
    data.forEach((piece, at) => {
      reader.push(piece, at === data.length - 1)
    })
  } catch {
    return 0
  }
  return size
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
