// A table of lines in order of their keys, looked into where it lies: no list of lines is ever built.

const END = 10
const TAB = 9

/** The bytes of `key TAB value` lines; keys and values are ASCII. */
export function writeLines(lines: readonly (readonly [key: string, value: string])[]): string {
  const sorted = [...lines].sort(([one], [two]) => (one < two ? -1 : 1))
  return sorted.map(([key, value]) => `${key}\t${value}\n`).join('')
}

/** What stands beside a key, in the first line that has it; undefined where the table lacks it. */
export function findLine(bytes: Uint8Array, key: string): string | undefined {
  const at = findFirstLine(bytes, key)
  return at < bytes.length && compareKey(bytes, at, key) === 0 ? toText(bytes, at + key.length + 1, END) : undefined
}

/** The same, of all lines that have the key. */
export function findLines(bytes: Uint8Array, key: string): readonly string[] {
  const values: string[] = []
  for (
    let at = findFirstLine(bytes, key);
    at < bytes.length && compareKey(bytes, at, key) === 0;
    at = toNext(bytes, at)
  )
    values.push(toText(bytes, at + key.length + 1, END))
  return values
}

/** The lines whose keys begin so, in order. */
export function findLinesFrom(bytes: Uint8Array, start: string): readonly (readonly [key: string, value: string])[] {
  const lines: (readonly [string, string])[] = []
  for (let at = findFirstLine(bytes, start); at < bytes.length; at = toNext(bytes, at)) {
    const key = toText(bytes, at, TAB)
    if (!key.startsWith(start)) break
    lines.push([key, toText(bytes, at + key.length + 1, END)])
  }
  return lines
}

/** Where the first line begins whose key does not sort before this one. Both bounds are beginnings of lines. */
function findFirstLine(bytes: Uint8Array, key: string): number {
  let low = 0
  let high = bytes.length
  while (low < high) {
    let from = (low + high) >> 1
    while (from > low && bytes[from - 1] !== END) from--
    if (compareKey(bytes, from, key) >= 0) high = from
    else for (low = from; low < high && bytes[low++] !== END; );
  }
  return low
}

/** Below 0 where the line sorts before the key, 0 where it is the key's. */
function compareKey(bytes: Uint8Array, from: number, key: string): number {
  for (let k = 0; k < key.length; k++) {
    const difference = (bytes[from + k] ?? END) - key.charCodeAt(k)
    if (difference !== 0) return difference
  }
  return bytes[from + key.length] === TAB ? 0 : 1
}

function toNext(bytes: Uint8Array, at: number): number {
  const end = bytes.indexOf(END, at)
  return end < 0 ? bytes.length : end + 1
}

/** Up to a mark, or the end of the line. */
function toText(bytes: Uint8Array, from: number, mark: number): string {
  let text = ''
  for (let at = from; at < bytes.length; at++) {
    const byte = bytes[at] ?? END
    if (byte === mark || byte === END) break
    text += String.fromCharCode(byte)
  }
  return text
}
