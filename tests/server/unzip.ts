// Reads a zip file by its central directory: enough for what packers write, with nothing installed.

import { inflateRawSync } from 'node:zlib'

const END = 0x06054b50
const STORED = 0

/** Contents by path. */
export function unzip(zip: Buffer): ReadonlyMap<string, Buffer> {
  const end = zip.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]))
  if (end < 0 || zip.readUInt32LE(end) !== END) throw new Error('this is no zip file')
  const files = new Map<string, Buffer>()
  let at = zip.readUInt32LE(end + 16)
  for (let left = zip.readUInt16LE(end + 10); left > 0; left--) {
    const [method, size, nameLength] = [zip.readUInt16LE(at + 10), zip.readUInt32LE(at + 20), zip.readUInt16LE(at + 28)]
    const name = zip.toString('utf8', at + 46, at + 46 + nameLength)
    const local = zip.readUInt32LE(at + 42)
    const start = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28)
    const data = zip.subarray(start, start + size)
    files.set(name, method === STORED ? data : inflateRawSync(data))
    at += 46 + nameLength + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32)
  }
  return files
}
