// What goes with which neighbours, in small vectors: how alike two words are in the company they keep, and how well a
// word stands between its neighbours.

import { toByteReader } from './bytes.ts'

/** The words next to a place, in lower case; undefined for none. `<s>` stands for the edge of a sentence. */
export interface Neighbours {
  readonly left: string | undefined
  readonly right: string | undefined
  readonly left2: string | undefined
  readonly right2: string | undefined
}

export interface Company {
  /** −1 to 1: how alike is the company of two words of the lexicon, by their places; undefined where one is not in the data. */
  likeness(one: number, other: number): number | undefined
  /** How much likelier than by chance the word stands there, as the logarithm; undefined where it is not in the data. */
  fit(word: number, neighbours: Neighbours): number | undefined
}

/** The edge of a sentence among neighbours. */
export const EDGE = '<s>'

interface Table {
  readonly places: Uint32Array
  readonly words: Int8Array
  readonly columns: ReadonlyMap<string, number>
  readonly neighbours: Int8Array
  readonly dims: number
  readonly scale: number
}

/** Costs next to nothing before the first question. See scripts/build/company.ts for the layout. */
export function openCompany(bytes: Uint8Array): Company {
  let opened: Table | undefined
  const open = (): Table => (opened ??= toTable(bytes))
  return {
    likeness(one, other) {
      const table = open()
      const [a, b] = [findRow(table.places, one), findRow(table.places, other)]
      if (a < 0 || b < 0) return undefined
      const { words, dims } = table
      const product = (x: number, y: number): number => dot(words, x * dims, words, y * dims, dims)
      return product(a, b) / Math.sqrt(product(a, a) * product(b, b))
    },
    fit(word, { left, right, left2, right2 }) {
      const table = open()
      const row = findRow(table.places, word)
      if (row < 0) return undefined
      const { words, neighbours, columns, dims, scale } = table
      let sum = 0
      for (const [side, one] of [left, right, left2, right2].entries()) {
        const column = one === undefined ? undefined : columns.get(one)
        if (column === undefined) continue
        sum += dot(words, row * dims, neighbours, (side * columns.size + column) * dims, dims) * scale
      }
      return sum
    },
  }
}

function dot(a: Int8Array, from: number, b: Int8Array, start: number, length: number): number {
  let sum = 0
  for (let i = 0; i < length; i++) sum += (a[from + i] ?? 0) * (b[start + i] ?? 0)
  return sum
}

function toTable(bytes: Uint8Array): Table {
  const reader = toByteReader(bytes)
  const places = new Uint32Array(reader.next())
  for (let i = 0, place = 0; i < places.length; i++) places[i] = place += reader.next()
  const dims = reader.next()
  const scale = reader.next() / 1e9
  const columns = new TextDecoder().decode(reader.take(reader.next())).split(' ')
  const toSigned = (length: number): Int8Array => {
    const taken = reader.take(length)
    return new Int8Array(taken.buffer, taken.byteOffset, length)
  }
  return {
    places,
    dims,
    scale,
    columns: new Map(columns.map((word, at) => [word, at])),
    words: toSigned(places.length * dims),
    neighbours: toSigned(4 * columns.length * dims),
  }
}

function findRow(places: Uint32Array, index: number): number {
  let low = 0
  let high = places.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((places[middle] ?? 0) < index) low = middle + 1
    else high = middle
  }
  return places[low] === index ? low : -1
}
