// The guesser's model: how likely a row is after the two rows before it, learnt from the aligned dictionary.
//
// A joint model of letters and sounds (Bisani and Ney 2008, "Joint-sequence models for grapheme-to-phoneme conversion"),
// with absolute discounting: an unseen run of rows falls back to a shorter one at a price that depends on the run.

/** Row ids are counted up by 2, so that the word's edge is 0 and the closing e 1. */
export const EDGE = 0
export const toSymbol = (row: number): number => row + 2
/** Costs are stored in steps of 1/16 nat. */
const SCALE = 16

/** A run of up to four symbols as one number. */
export const toRun = (a: number, b: number, c: number, d: number): number => ((a * 1024 + b) * 1024 + c) * 1024 + d

export interface GuessModel {
  /** Cost in nats of symbol `d` after `a b c` (0 where there is none before). */
  cost(a: number, b: number, c: number, d: number): number
  /** Cost in nats of a symbol wherever it stands. */
  plain(d: number): number
}

/** Learns from paths of row ids and writes the model as bytes. */
export function learnModel(paths: Iterable<readonly number[]>, least: readonly [number, number, number]): Uint8Array {
  const counts = [
    new Map<number, number>(),
    new Map<number, number>(),
    new Map<number, number>(),
    new Map<number, number>(),
  ] as const
  for (const path of paths) {
    const symbols = [EDGE, EDGE, EDGE, ...path.map(toSymbol), EDGE]
    for (let k = 3; k < symbols.length; k++) {
      for (let order = 0; order < 4; order++) {
        const run = symbols.slice(k - order, k + 1).reduce((sum, symbol) => sum * 1024 + symbol, 0)
        counts[order]?.set(run, (counts[order]?.get(run) ?? 0) + 1)
      }
    }
  }
  return encode(counts.map((map, order) => toTable(map, order, least)))
}

const DISCOUNT = 0.7

/** Costs of the runs of one order, each with the price of falling back from it as a context of the next order. */
function toTable(counts: ReadonlyMap<number, number>, order: number, least: readonly number[]) {
  const totals = new Map<number, { sum: number; kinds: number }>()
  for (const [run, count] of counts) {
    const context = Math.floor(run / 1024)
    const total = totals.get(context) ?? { sum: 0, kinds: 0 }
    totals.set(context, { sum: total.sum + count, kinds: total.kinds + 1 })
  }
  const kept: [number, number][] = []
  const lost = new Map<number, number>()
  for (const [run, count] of counts) {
    const context = Math.floor(run / 1024)
    const { sum } = totals.get(context) ?? { sum: 1 }
    if (order > 0 && count < (least[order - 1] ?? 1)) lost.set(context, (lost.get(context) ?? 0) + count)
    else kept.push([run, -Math.log((count - (order > 0 ? DISCOUNT : 0)) / sum)])
  }
  const backs = new Map<number, number>()
  if (order > 0) {
    const keptKinds = new Map<number, number>()
    for (const [run] of kept) keptKinds.set(Math.floor(run / 1024), (keptKinds.get(Math.floor(run / 1024)) ?? 0) + 1)
    for (const [context, { sum }] of totals) {
      const mass = (DISCOUNT * (keptKinds.get(context) ?? 0) + (lost.get(context) ?? 0)) / sum
      backs.set(context, -Math.log(Math.max(mass, 1e-4)))
    }
  }
  return { kept: kept.sort((x, y) => x[0] - y[0]), backs }
}

type Learnt = ReturnType<typeof toTable>

const quantise = (cost: number): number => Math.max(0, Math.min(255, Math.round(cost * SCALE)))

// Per order: count u32, then per run 5 bytes of key (40 bits), cost u8, price of falling back u8.
function encode(tables: readonly Learnt[]): Uint8Array {
  const size = tables.reduce((sum, table) => sum + 4 + table.kept.length * 7, 0)
  const bytes = new Uint8Array(size)
  const view = new DataView(bytes.buffer)
  let at = 0
  tables.forEach((table, order) => {
    view.setUint32(at, table.kept.length, true)
    at += 4
    const backs = tables[order + 1]?.backs
    for (const [run, cost] of table.kept) {
      view.setUint32(at, run % 2 ** 32, true)
      bytes[at + 4] = Math.floor(run / 2 ** 32)
      bytes[at + 5] = quantise(cost)
      bytes[at + 6] = quantise(backs?.get(run) ?? 0)
      at += 7
    }
  })
  return bytes
}

interface Table {
  readonly keys: Float64Array
  readonly costs: Uint8Array
  readonly backs: Uint8Array
}

/** Opens the bytes that `learnModel` wrote. They are laid out for searching when the first word is guessed. */
export function openModel(bytes: Uint8Array): GuessModel {
  let laidOut: readonly Table[] | undefined
  const tables = (): readonly Table[] => (laidOut ??= layOut(bytes))
  const plain = (d: number): number => {
    const [table] = tables()
    const place = table ? find(table.keys, d) : -1
    return table && place >= 0 ? (table.costs[place] ?? 0) / SCALE : UNSEEN
  }
  return {
    plain,
    cost(a, b, c, d) {
      const all = tables()
      let context = (a * 1024 + b) * 1024 + c
      let price = 0
      // The longest run first; each context is the one before it without its oldest symbol.
      for (let order = 3; order >= 0; order--) {
        const table = all[order]
        const place = table ? find(table.keys, order === 0 ? d : context * 1024 + d) : -1
        if (table && place >= 0) return price + (table.costs[place] ?? 0) / SCALE
        const shorter = order > 0 ? all[order - 1] : undefined
        const at = shorter ? find(shorter.keys, context) : -1
        if (shorter && at >= 0) price += (shorter.backs[at] ?? 0) / SCALE
        context %= order === 3 ? 1024 * 1024 : 1024
      }
      return price + UNSEEN
    },
  }
}

const UNSEEN = 16

function layOut(bytes: Uint8Array): readonly Table[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables: Table[] = []
  for (let at = 0; at < bytes.length; ) {
    const count = view.getUint32(at, true)
    at += 4
    const table = { keys: new Float64Array(count), costs: new Uint8Array(count), backs: new Uint8Array(count) }
    for (let k = 0; k < count; k++, at += 7) {
      table.keys[k] = view.getUint32(at, true) + (bytes[at + 4] ?? 0) * 2 ** 32
      table.costs[k] = bytes[at + 5] ?? 0
      table.backs[k] = bytes[at + 6] ?? 0
    }
    tables.push(table)
  }
  return tables
}

/** The place of a number in a rising list, or -1. */
function find(keys: Float64Array, wanted: number): number {
  let low = 0
  let high = keys.length - 1
  while (low <= high) {
    const middle = (low + high) >> 1
    const difference = (keys[middle] as number) - wanted
    if (difference === 0) return middle
    if (difference < 0) low = middle + 1
    else high = middle - 1
  }
  return -1
}
