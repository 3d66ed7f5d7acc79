// Reads a picture from its bytes: what kind it is, how large, and whether it is whole.

import { type Result, succeed } from '../../problem/index.ts'
import type { Picture } from '../sheet.ts'
import { toBadPicture } from './bad-picture.ts'
import { readJpeg } from './jpeg.ts'
import { readPng } from './png.ts'
import { readSvg } from './svg.ts'

/** What pictures are called that can be printed. */
export const PICTURE_NAME = /\.(?:png|jpe?g|svg)$/i

/** Pictures that phones and the web have, and that cannot be printed here. */
export const OTHER_PICTURE_NAME = /\.(?:gif|webp|hei[cf]|avif|bmp|tiff?)$/i

/** The kind is told by the bytes, not by the name: a PNG that is called `.jpg` is common. */
export function readPicture(bytes: Uint8Array): Result<Picture> {
  const [one = 0, two = 0, three = 0] = bytes
  if (one === 0xff && two === 0xd8 && three === 0xff) return readJpeg(bytes)
  if (one === 0x89 && two === 0x50 && three === 0x4e) return readPng(bytes)
  if (bytes.length === 0) return toBadPicture('is empty')
  const start = new TextDecoder().decode(bytes.subarray(0, 2000)).trimStart()
  if (/^(?:<\?xml|<!--|<!DOCTYPE svg|<svg)/i.test(start) && /<svg[\s>]/.test(start)) {
    const found = readSvg(new TextDecoder().decode(bytes))
    return 'broken' in found ? toBadPicture(found.broken) : succeed(found)
  }
  const kind = findOtherKind(bytes)
  return kind === undefined
    ? toBadPicture('is no picture of a kind that can be printed')
    : toBadPicture(`is ${kind.name}, which cannot be printed`, kind.note)
}

interface OtherKind {
  readonly name: string
  readonly note?: string
}

/** By the first bytes, whatever the file is called: a phone's picture is often sent under another name. */
function findOtherKind(bytes: Uint8Array): OtherKind | undefined {
  const start = String.fromCharCode(...bytes.subarray(0, 16))
  if (/^.{4}ftyp(?:hei|hev|mif1|msf1)/s.test(start))
    return {
      name: 'a HEIC picture of a phone',
      note: 'Open it on the phone or computer, and save or export it as JPEG.',
    }
  if (/^.{4}ftypavi[fs]/s.test(start)) return { name: 'an AVIF picture' }
  if (/^RIFF.{4}WEBP/s.test(start)) return { name: 'a WebP picture' }
  if (/^GIF8/.test(start)) return { name: 'a GIF picture' }
  if (/^(?:II\*\0|MM\0\*)/.test(start)) return { name: 'a TIFF picture, or a camera’s raw one' }
  return undefined
}
