// The aligner: learns from the dictionary how likely each row is, and finds the likeliest units of a word.

import { type Arc, CLOSE, LONG, OPEN, type RowSet, STATES, toArcs } from './lattice.ts'

/** A word as letters and sounds. */
export interface Entry {
  readonly word: string
  readonly phones: readonly string[]
}

/** Row ids in order, CLOSE where a silent e closes a split grapheme. */
export type Path = readonly number[]

/** Costs are negative natural logarithms of probabilities. */
export interface Costs {
  readonly row: Float64Array
  /** Added where a split grapheme closes before other letters (`homework`). */
  readonly closeInside: number
}

const FIRST_GUESS = { close: 3, silent: 4 }
/** A silent letter is drawn only where no grapheme takes it: `rh` in `rhyme`, not `r` and a silent `h`. */
const SILENT_PENALTY = 10

/** Even costs, silent letters dearer: the start of learning. */
export function toFirstCosts(set: RowSet): Costs {
  const row = Float64Array.from(set.rows, (r) => 3 + (r.phones.length === 0 ? FIRST_GUESS.silent : 0))
  return { row, closeInside: FIRST_GUESS.close }
}

const isEnd = (state: number): boolean => state % STATES === OPEN || state % STATES === LONG

const toCost = (arc: Arc, costs: Costs): number =>
  arc.row === CLOSE ? (arc.inside ? costs.closeInside : 0) : (costs.row[arc.row] ?? Infinity)

/**
 * Expectation–maximisation over all admissible alignments of all entries (Dempster, Laird and Rubin 1977):
 * each round counts every row by the probability of the alignments that use it, then sets its cost from the count.
 */
export function learnCosts(set: RowSet, entries: readonly Entry[], rounds: number): Costs {
  let costs = toFirstCosts(set)
  for (let round = 0; round < rounds; round++) costs = learnOnce(set, entries, costs)
  return costs
}

function learnOnce(set: RowSet, entries: readonly Entry[], costs: Costs): Costs {
  const counts = new Float64Array(set.rows.length)
  const closes = { inside: 0, end: 0 }
  for (const entry of entries) countEntry(set, entry, costs, counts, closes)
  // A little of every row is always kept, so that a row that is never used still has a finite cost.
  const total = counts.reduce((sum, count) => sum + count, 0) + counts.length * 0.1
  return {
    row: counts.map((count) => -Math.log((count + 0.1) / total)),
    closeInside: -Math.log((closes.inside + 1) / (closes.inside + closes.end + 2)),
  }
}

function countEntry(
  set: RowSet,
  entry: Entry,
  costs: Costs,
  counts: Float64Array,
  closes: { inside: number; end: number },
): void {
  const { arcs, size, width } = toArcs(set, entry.word, entry.phones)
  const ahead = new Float64Array(size)
  const last = (entry.word.length * width + entry.phones.length) * STATES
  for (let state = last; state < last + STATES; state++) if (isEnd(state)) ahead[state] = 1
  const weights = arcs.map((arc) => Math.exp(-toCost(arc, costs)))
  for (let k = arcs.length - 1; k >= 0; k--) {
    const arc = arcs[k] as Arc
    ahead[arc.from] = (ahead[arc.from] ?? 0) + (weights[k] ?? 0) * (ahead[arc.to] ?? 0)
  }
  const whole = ahead[0] ?? 0
  if (whole <= 0) return
  const behind = new Float64Array(size)
  behind[0] = 1
  for (let k = 0; k < arcs.length; k++) {
    const arc = arcs[k] as Arc
    const passed = (behind[arc.from] ?? 0) * (weights[k] ?? 0)
    if (passed === 0) continue
    behind[arc.to] = (behind[arc.to] ?? 0) + passed
    const share = (passed * (ahead[arc.to] ?? 0)) / whole
    if (arc.row === CLOSE) closes[arc.inside ? 'inside' : 'end'] += share
    else counts[arc.row] = (counts[arc.row] ?? 0) + share
  }
}

/** The likeliest path through a word, with its cost; undefined where the table has no way to say it. */
export function findAlignment(set: RowSet, entry: Entry, costs: Costs): { path: Path; cost: number } | undefined {
  const { arcs, size, width } = toArcs(set, entry.word, entry.phones)
  const best = new Float64Array(size).fill(Infinity)
  const via = new Int32Array(size).fill(-1)
  best[0] = 0
  for (let k = 0; k < arcs.length; k++) {
    const arc = arcs[k] as Arc
    const silent = arc.row !== CLOSE && set.rows[arc.row]?.phones.length === 0
    const cost = (best[arc.from] ?? Infinity) + toCost(arc, costs) + (silent ? SILENT_PENALTY : 0)
    if (cost < (best[arc.to] ?? Infinity)) {
      best[arc.to] = cost
      via[arc.to] = k
    }
  }
  const last = (entry.word.length * width + entry.phones.length) * STATES
  const end = (best[last + OPEN] ?? Infinity) <= (best[last + LONG] ?? Infinity) ? last + OPEN : last + LONG
  if (!Number.isFinite(best[end])) return undefined
  const path: number[] = []
  for (let state = end; state !== 0; ) {
    const arc = arcs[via[state] as number] as Arc
    path.push(arc.row)
    state = arc.from
  }
  return { path: path.reverse(), cost: best[end] ?? Infinity }
}
