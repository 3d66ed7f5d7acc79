// Whole numbers as bytes: seven bits a byte, least first, the high bit where more follow; and sections with their
// lengths before them.

/** Reads numbers one after another. */
export interface ByteReader {
  next(): number
  /** The next so many bytes, not copied. */
  take(length: number): Uint8Array
}

export function toByteReader(bytes: Uint8Array): ByteReader {
  let at = 0
  return {
    next() {
      let value = 0
      let scale = 1
      for (;;) {
        const byte = bytes[at++]
        if (byte === undefined) throw new RangeError('the word data ends too early')
        value += (byte & 0x7f) * scale
        if (byte < 0x80) return value
        scale *= 128
      }
    },
    take(length) {
      if (at + length > bytes.length) throw new RangeError('the word data ends too early')
      at += length
      return bytes.subarray(at - length, at)
    },
  }
}

/** The bytes of the numbers in turn. */
export function toBytes(numbers: readonly number[]): Uint8Array {
  const bytes: number[] = []
  for (let value of numbers) {
    while (value >= 0x80) {
      bytes.push((value % 128) | 0x80)
      value = Math.floor(value / 128)
    }
    bytes.push(value)
  }
  return Uint8Array.from(bytes)
}

export function joinSections(sections: readonly Uint8Array[]): Uint8Array {
  const parts = sections.flatMap((section) => [toBytes([section.length]), section])
  const joined = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    joined.set(part, at)
    at += part.length
  }
  return joined
}

export function splitSections(bytes: Uint8Array, count: number): Uint8Array[] {
  const reader = toByteReader(bytes)
  return Array.from({ length: count }, () => reader.take(reader.next()))
}
