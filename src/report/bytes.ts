// Bytes that are put together piece by piece in one place that grows.

export interface Bytes {
  readonly size: number
  add(piece: Uint8Array): void
  /** Letters and marks of ASCII only. */
  ascii(text: string): void
  text(text: string): void
  /** As JSON writes it. */
  number(value: number): void
  /** A copy of all pieces since it was last called. */
  take(): Uint8Array
}

const START = 1 << 17

export function createBytes(): Bytes {
  const encoder = new TextEncoder()
  let room = new Uint8Array(START)
  let size = 0

  function make(more: number): void {
    if (size + more <= room.length) return
    const wider = new Uint8Array(Math.max(room.length * 2, size + more))
    wider.set(room.subarray(0, size))
    room = wider
  }

  function ascii(text: string): void {
    make(text.length)
    const to = room
    const from = size
    for (let at = 0; at < text.length; at++) to[from + at] = text.charCodeAt(at)
    size = from + text.length
  }

  return {
    get size() {
      return size
    },
    add(piece) {
      make(piece.length)
      room.set(piece, size)
      size += piece.length
    },
    ascii,
    text(text) {
      // UTF-8 takes three bytes at most for what UTF-16 counts as one.
      make(text.length * 3)
      size += encoder.encodeInto(text, room.subarray(size)).written
    },
    number(value) {
      if (!Number.isInteger(value) || value < 0 || value > MOST_BY_HAND) return ascii(JSON.stringify(value))
      make(DIGITS)
      size = writeDigits(value, room, size)
    },
    take() {
      const taken = room.slice(0, size)
      size = 0
      // What one huge text needed is not kept for good.
      if (room.length > START * 64) room = new Uint8Array(START)
      return taken
    },
  }
}

const MOST_BY_HAND = 999_999_999
const DIGITS = 9

/** @returns where the number ends */
function writeDigits(value: number, room: Uint8Array, from: number): number {
  let end = from + 1
  for (let rest = value; rest >= 10; rest = Math.floor(rest / 10)) end++
  let rest = value
  for (let at = end - 1; at >= from; at--) {
    const next = Math.floor(rest / 10)
    room[at] = 48 + rest - next * 10
    rest = next
  }
  return end
}
