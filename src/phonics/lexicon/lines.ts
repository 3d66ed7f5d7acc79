// A table of lines in order of their keys, looked into where it lies: no list of lines is ever built.

const END = 10
const TAB = 9

/** The bytes of `key TAB value` lines; keys and values are ASCII, and no key stands twice. */
export function writeLines(lines: readonly (readonly [key: string, value: string])[]): string {
  const sorted = [...lines].sort(([one], [two]) => (one < two ? -1 : 1))
  return sorted.map(([key, value]) => `${key}\t${value}\n`).join('')
}

/** What stands beside a key; undefined where the table lacks it. */
export function findLine(bytes: Uint8Array, key: string): string | undefined {
  let low = 0
  let high = bytes.length
  while (low < high) {
    let from = (low + high) >> 1
    while (from > low && bytes[from - 1] !== END) from--
    const order = compareKey(bytes, from, key)
    if (order === 0) return toText(bytes, from + key.length + 1)
    if (order > 0) high = from
    else for (low = from; low < high && bytes[low++] !== END; );
  }
  return undefined
}

/** The keys that begin so, in order. */
export function findKeys(bytes: Uint8Array, start: string): readonly string[] {
  const keys: string[] = []
  let low = 0
  let high = bytes.length
  while (low < high) {
    let from = (low + high) >> 1
    while (from > low && bytes[from - 1] !== END) from--
    if (compareKey(bytes, from, start) >= 0) high = from
    else for (low = from; low < high && bytes[low++] !== END; );
  }
  for (let at = low; at < bytes.length; ) {
    const key = toText(bytes, at)
    if (!key.startsWith(start)) break
    keys.push(key)
    at = bytes.indexOf(END, at) + 1
  }
  return keys
}

/** Below 0 where the line sorts before the key, 0 where it is the key's. */
function compareKey(bytes: Uint8Array, from: number, key: string): number {
  for (let k = 0; k < key.length; k++) {
    const difference = (bytes[from + k] ?? END) - key.charCodeAt(k)
    if (difference !== 0) return difference
  }
  return bytes[from + key.length] === TAB ? 0 : 1
}

function toText(bytes: Uint8Array, from: number): string {
  let text = ''
  for (let at = from; at < bytes.length; at++) {
    const byte = bytes[at] ?? END
    if (byte === TAB || byte === END) break
    text += String.fromCharCode(byte)
  }
  return text
}
