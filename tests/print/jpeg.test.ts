// A photograph that was taken with the camera on its side. Tag 0x0112 and its values are those of Exif 2.3 (CIPA DC-008), from memory.

import { expect, it } from 'vitest'
import { readPicture } from '../../src/print/index.ts'

/** Markers of ITU-T T.81 without a picture inside: 40 dots wide, 30 high. */
function toJpeg(turn: number, isLittle: boolean): Uint8Array {
  const exif = Buffer.alloc(32)
  exif.write('Exif\0\0', 'latin1')
  const put = (value: number, at: number, size: 2 | 4): number =>
    isLittle ? exif.writeUIntLE(value, at + 6, size) : exif.writeUIntBE(value, at + 6, size)
  exif.write(isLittle ? 'II' : 'MM', 6, 'latin1')
  put(42, 2, 2)
  put(8, 4, 4)
  put(1, 8, 2)
  put(0x0112, 10, 2)
  put(3, 12, 2)
  put(1, 14, 4)
  put(turn, 18, 2)
  const segment = (marker: number, data: Uint8Array): Buffer => {
    const head = Buffer.from([0xff, marker, 0, data.length + 2])
    return Buffer.concat([head, data])
  }
  const frame = segment(0xc0, Buffer.from([8, 0, 30, 0, 40, 1, 1, 0x11, 0]))
  const scan = segment(0xda, Buffer.from([1, 1, 0, 0, 63, 0]))
  return Buffer.concat([
    ...[Buffer.from([0xff, 0xd8]), segment(0xe1, exif), frame, scan],
    Buffer.from([1, 2, 3, 0xff, 0xd9]),
  ])
}

it.each([1, 2, 3, 4, 5, 6, 7, 8])('lies as the camera says: %s', (turn) => {
  for (const isLittle of [true, false]) {
    const picture = readPicture(toJpeg(turn, isLittle))
    const [width, height] = turn >= 5 ? [30, 40] : [40, 30]
    expect(picture).toMatchObject({ ok: true, value: { kind: 'jpeg', width, height } })
  }
})
