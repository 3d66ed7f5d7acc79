// The guesser's model: how likely a row is after the rows before it. Read in place; see `scripts/build/guess-model.ts`.
//
//   length of the symbols u32 · count of nodes u32 · 64 costs f32 · 64 costs of falling back f32 · symbols · nodes · places
//   symbols  text, a line each from number 2: row, and the stress of its vowels (`17 1`)
//   nodes    three bytes each: symbol 10 bits, last of its sisters 1, has children 1, cost 6, cost of falling back 6
//
// The nodes are a tree of runs read backwards: the last symbol of a run first, then the one before it. Sisters stand side
// by side in the order of their symbols, level after level, so that no node needs to say where its children lie. The
// places say it for every 32nd node (u24 each, the root counted as the first): the rest is found when it is asked for.

import { readU24 } from '../u24.ts'

export const EDGE = 0
export const CLOSE_SYMBOL = 1
export const MOST_SYMBOLS = 1024
export const LEVELS = 64
export const HEADER = 8 + 2 * LEVELS * 4
/** The nodes of one place. */
export const PLACE = 32
export const PLACE_BYTES = 3
const IS_LAST = 4
const HAS_CHILDREN = 8
/** Cost in nats of a symbol that was never seen. */
const UNSEEN = 16
const NO_SYMBOLS: readonly number[] = []

/** What has been read so far, as much of it as the model knows: a place in its tree, and what falling back costs. */
export interface Context {
  /** The symbols before, the last one first. */
  readonly symbols: readonly number[]
  /** The node of the longest known run of them: contexts with the same node are alike from here on. */
  readonly node: number
  /** Cost of falling back from the longest known run to the one of so many symbols. */
  readonly backs: readonly number[]
}

/** A row with the stress of its vowels. */
interface RowSymbol {
  readonly row: number
  readonly stress: readonly (0 | 1)[]
}

export interface GuessModel {
  /** By number; nothing for the edge and the closing e. */
  readonly symbols: readonly (RowSymbol | undefined)[]
  /** The numbers of a row's symbols. */
  readonly byRow: ReadonlyMap<number, readonly number[]>
  readonly start: Context
  /** Cost in nats of a symbol in a context. */
  cost(context: Context, symbol: number): number
  after(context: Context, symbol: number): Context
}

/** Opens the bytes of a model. They are laid out when the first word is guessed. */
export function openModel(bytes: Uint8Array): () => GuessModel {
  let model: GuessModel | undefined
  // While the lexicon is being built there is none yet.
  return () => (model ??= layOut(bytes.length === 0 ? new Uint8Array(HEADER) : bytes))
}

function layOut(bytes: Uint8Array): GuessModel {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const names = view.getUint32(0, true)
  const count = view.getUint32(4, true)
  const costs = Float64Array.from({ length: LEVELS }, (_, k) => view.getFloat32(8 + k * 4, true))
  const backs = Float64Array.from({ length: LEVELS }, (_, k) => view.getFloat32(8 + (LEVELS + k) * 4, true))
  const symbols = readSymbols(new TextDecoder().decode(bytes.subarray(HEADER, HEADER + names)))
  const nodes = bytes.subarray(HEADER + names, HEADER + names + count * 3)
  const { ranges, fill } = openChildren(nodes, bytes.subarray(HEADER + names + count * 3))
  const symbolOf = (node: number): number => (nodes[node * 3] ?? 0) | (((nodes[node * 3 + 1] ?? 0) & 3) << 8)
  const find = (node: number, symbol: number): number => {
    fill(node)
    let low = ranges[2 * node + 2] ?? 0
    let high = (ranges[2 * node + 3] ?? 0) - 1
    while (low <= high) {
      const middle = (low + high) >> 1
      const difference = symbolOf(middle) - symbol
      if (difference === 0) return middle
      if (difference < 0) low = middle + 1
      else high = middle - 1
    }
    return -1
  }
  const costOf = (node: number): number =>
    costs[((nodes[node * 3 + 1] ?? 0) >> 4) | (((nodes[node * 3 + 2] ?? 0) & 3) << 4)] ?? 0
  const backOf = (node: number): number => backs[(nodes[node * 3 + 2] ?? 0) >> 2] ?? 0
  // The first level is asked most often.
  const top = new Int32Array(MOST_SYMBOLS).fill(-1)
  fill(-1)
  for (let node = ranges[0] ?? 0; node < (ranges[1] ?? 0); node++) top[symbolOf(node)] = node

  // What has been read is told by the deepest node that holds it, so that each context is made once.
  const contexts = new Map<number, Context>()

  // A symbol's cost and what is known after it lie at the same node: it is looked for once.
  let asked: Context | undefined
  let symbolAsked = -1
  let nodeFound = -1
  let used = 0

  /** Goes from a symbol back through those before it, as far as the tree knows them. */
  function seek(context: Context | undefined, symbol: number): void {
    if (asked === context && symbolAsked === symbol) return
    asked = context
    symbolAsked = symbol
    nodeFound = top[symbol] ?? -1
    used = 0
    const before = context?.symbols ?? NO_SYMBOLS
    while (nodeFound >= 0 && used < before.length) {
      const next = find(nodeFound, before[used] ?? -1)
      if (next < 0) break
      nodeFound = next
      used++
    }
  }

  function after(context: Context | undefined, symbol: number): Context {
    seek(context, symbol)
    let known = contexts.get(nodeFound)
    if (known === undefined)
      contexts.set(nodeFound, (known = makeContext(nodeFound, [symbol, ...(context?.symbols ?? NO_SYMBOLS)])))
    return known
  }

  function makeContext(deepest: number, history: readonly number[]): Context {
    const known: number[] = []
    for (let node = -1; node !== deepest; ) {
      const symbol = history[known.length] ?? -1
      node = node < 0 ? (top[symbol] ?? -1) : find(node, symbol)
      known.push(backOf(node))
    }
    const falls: number[] = []
    // Each is summed from its first on, so that it comes out the same to the last digit wherever it is asked for.
    for (let from = 0; from <= known.length; from++) {
      let sum = 0
      for (let at = from; at < known.length; at++) sum += known[at] ?? 0
      falls.push(sum)
    }
    return { symbols: history.slice(0, known.length), node: deepest, backs: falls }
  }

  return {
    symbols,
    byRow: groupByRow(symbols),
    start: after(undefined, EDGE),
    cost(context, symbol) {
      seek(context, symbol)
      return nodeFound < 0 ? UNSEEN : costOf(nodeFound) + (context.backs[used] ?? 0)
    },
    after,
  }
}

function readSymbols(text: string): readonly (RowSymbol | undefined)[] {
  const lines = text === '' ? [] : text.split('\n')
  // There are many symbols and few ways to stress one.
  const known = new Map<string, readonly (0 | 1)[]>()
  const rows = lines.map((line): RowSymbol => {
    const at = line.indexOf(' ')
    const marks = line.slice(at + 1)
    let stress = known.get(marks)
    if (stress === undefined) known.set(marks, (stress = Array.from(marks, (mark) => (mark === '1' ? 1 : 0))))
    return { row: Number(line.slice(0, at)), stress }
  })
  return [undefined, undefined, ...rows]
}

function groupByRow(symbols: readonly (RowSymbol | undefined)[]): ReadonlyMap<number, readonly number[]> {
  const byRow = new Map<number, number[]>()
  symbols.forEach((one, number) => {
    if (one === undefined) return
    const list = byRow.get(one.row)
    if (list) list.push(number)
    else byRow.set(one.row, [number])
  })
  return byRow
}

interface Children {
  /** Two by node, one more, so that the root is 0: where its children begin, and where they end. Both lie in one line of the memory. */
  readonly ranges: Uint32Array
  /** Must be called with a node before its children are asked for. */
  fill(node: number): void
}

function openChildren(nodes: Uint8Array, places: Uint8Array): Children {
  const count = nodes.length / 3
  const ranges = new Uint32Array(2 * (count + 1))
  const isFilled = new Uint8Array(Math.ceil((count + 1) / PLACE))
  // Most of it runs a few hundred times, as slow code, for a word or two: it counts in bytes.
  const fillPlace = (place: number): void => {
    isFilled[place] = 1
    const stop = Math.min(count + 1, (place + 1) * PLACE)
    const end = nodes.length
    for (let at = place * PLACE, mark = 3 * readU24(places, place * PLACE_BYTES) + 1; at < stop && mark < end; at++) {
      if (at > 0 && ((nodes[3 * at - 2] as number) & HAS_CHILDREN) === 0) continue
      ranges[2 * at] = (mark - 1) / 3
      while (mark < end && ((nodes[mark] as number) & IS_LAST) === 0) mark += 3
      mark += 3
      ranges[2 * at + 1] = (mark - 1) / 3
    }
  }
  return {
    ranges,
    fill(node) {
      const place = Math.floor((node + 1) / PLACE)
      if (isFilled[place] === 0) fillPlace(place)
    },
  }
}

/** Where the children of every 32nd node begin, or those of the next that has some. */
export function toPlaces(nodes: Uint8Array): Uint32Array {
  const count = nodes.length / 3
  const places = new Uint32Array(Math.ceil((count + 1) / PLACE))
  for (let at = 0, next = 0; at <= count; at++) {
    if (at % PLACE === 0) places[at / PLACE] = next
    if (at > 0 && !((nodes[at * 3 - 2] ?? 0) & HAS_CHILDREN)) continue
    while (next < count && !((nodes[next * 3 + 1] ?? 0) & IS_LAST)) next++
    next++
  }
  return places
}
