// Counts runs of symbols and makes shares of the counts, with modified Kneser–Ney discounting.

import { EDGE } from '../../src/phonics/guess/model.ts'
import type { Smoothed } from './guess-model.ts'

/** All runs as a tree: each is the run before it (`parent`) with one symbol more. Run 0 is empty. */
export interface Runs {
  readonly longest: number
  readonly parent: number[]
  readonly symbol: number[]
  /** The run without its first symbol. */
  readonly suffix: number[]
  readonly depth: number[]
  readonly count: number[]
  readonly children: Map<number, number>
  /** All runs but the empty one, short ones first; filled by `smooth`. */
  byDepth: readonly number[]
}

export const countRuns = (longest: number): Runs => ({
  longest,
  parent: [-1],
  symbol: [-1],
  suffix: [0],
  depth: [0],
  count: [0],
  children: new Map(),
  byDepth: [],
})

const WIDTH = 2048

function toChild(runs: Runs, run: number, symbol: number): number {
  const key = run * WIDTH + symbol
  const known = runs.children.get(key)
  if (known !== undefined) return known
  const child = runs.parent.length
  runs.children.set(key, child)
  runs.parent.push(run)
  runs.symbol.push(symbol)
  runs.depth.push((runs.depth[run] ?? 0) + 1)
  runs.count.push(0)
  runs.suffix.push(0)
  if (run !== 0) runs.suffix[child] = toChild(runs, runs.suffix[run] ?? 0, symbol)
  return child
}

/** Counts every run in a word, edges and all. */
export function addRun(runs: Runs, symbols: readonly number[]): void {
  for (let from = 0; from < symbols.length; from++) {
    let run = 0
    for (let at = from; at < Math.min(symbols.length, from + runs.longest); at++) {
      run = toChild(runs, run, symbols[at] ?? 0)
      runs.count[run] = (runs.count[run] ?? 0) + 1
    }
  }
}

/** Costs of all runs, mixed with those of their shorter runs. */
export function smooth(runs: Runs, kinds: number): Smoothed {
  const { parent, suffix, depth } = runs
  const size = parent.length
  runs.byDepth = sortByDepth(depth)
  const counts = toContinued(runs)
  const discounts = toDiscounts(runs, counts)
  const discount = (run: number): number =>
    discounts[depth[run] ?? 0]?.[Math.min(3, Math.max(1, counts[run] ?? 1))] ?? 0.5
  const total = new Float64Array(size)
  const taken = new Float64Array(size)
  for (let run = 1; run < size; run++) {
    const context = parent[run] ?? 0
    total[context] = (total[context] ?? 0) + (counts[run] ?? 0)
    taken[context] = (taken[context] ?? 0) + discount(run)
  }
  const shares = new Float64Array(size)
  for (const run of runs.byDepth) {
    const context = parent[run] ?? 0
    const all = total[context] || 1
    const shorter = depth[run] === 1 ? 1 / kinds : (shares[suffix[run] ?? 0] ?? 0)
    shares[run] = Math.max(0, (counts[run] ?? 0) - discount(run)) / all + ((taken[context] ?? 0) / all) * shorter
  }
  const backs = total.map((all, run) => (all === 0 ? 0 : -Math.log(Math.min(1, (taken[run] ?? 0) / all))))
  return { costs: shares.map((share) => -Math.log(share)), backs, kept: new Uint8Array(size) }
}

function sortByDepth(depth: readonly number[]): readonly number[] {
  const groups: number[][] = []
  for (let run = 1; run < depth.length; run++) (groups[depth[run] ?? 0] ??= []).push(run)
  return groups.flat()
}

/** The longest runs, and those that begin a word, by how often they are met; others by how many symbols stand before them. */
function toContinued({ parent, suffix, symbol, depth, count, longest }: Runs): Float64Array {
  const size = parent.length
  const before = new Float64Array(size)
  const begins = new Uint8Array(size)
  for (let run = 1; run < size; run++) {
    if ((depth[run] ?? 0) > 1) before[suffix[run] ?? 0] = (before[suffix[run] ?? 0] ?? 0) + 1
    begins[run] = parent[run] === 0 ? Number(symbol[run] === EDGE) : (begins[parent[run] ?? 0] ?? 0)
  }
  return before.map((kinds, run) =>
    depth[run] === longest || (begins[run] === 1 && (depth[run] ?? 0) > 1) ? (count[run] ?? 0) : kinds,
  )
}

/** What is taken off a count of one, two, and three or more, for each length of run. */
function toDiscounts({ depth, longest }: Runs, counts: Float64Array): readonly (readonly number[])[] {
  const met = Array.from({ length: longest + 1 }, () => [0, 0, 0, 0, 0])
  for (let run = 1; run < depth.length; run++) {
    const times = counts[run] ?? 0
    const row = met[depth[run] ?? 0]
    if (row && times >= 1 && times <= 4) row[times] = (row[times] ?? 0) + 1
  }
  return met.map(([, one = 0, two = 0, three = 0, four = 0]) => {
    const share = one / (one + 2 * two)
    const taken = [1 - (2 * share * two) / one, 2 - (3 * share * three) / two, 3 - (4 * share * four) / three]
    // Too few runs of a length, as in a toy table, give no figure.
    return [0, ...taken.map((one, k) => (Number.isFinite(one) && one > 0 && one < k + 1 ? one : 0.5))]
  })
}
