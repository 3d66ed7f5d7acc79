// Learns the guesser's model from the aligned dictionary and writes it as bytes; `src/phonics/guess/model.ts` reads them.
//
// A joint model of letters and sounds (Bisani and Ney 2008, "Joint-sequence models for grapheme-to-phoneme conversion") over
// rows of the table with their stress, up to six in a run; smoothed by modified Kneser–Ney discounting (Chen and Goodman
// 1999) and pruned by how much each run helps (after Stolcke 1998). All three from memory.

import { isVowel } from '../../src/phonics/arpabet.ts'
import { CLOSE_SYMBOL, EDGE } from '../../src/phonics/guess/model.ts'
import { CLOSE } from '../../src/phonics/lattice.ts'
import type { Row } from '../../src/phonics/rows.ts'
import { writeModel } from './guess-model-file.ts'
import { addRun, countRuns, type Runs, smooth } from './guess-model-runs.ts'

/** The longest run of rows, and how much a run must help to be kept, in nats for each row of the dictionary. */
export interface ModelLimits {
  readonly longest: number
  readonly least: number
}

/** `npm run accuracy` shows the figures: longer runs help no more, more of them help little for their size. */
export const LIMITS: ModelLimits = { longest: 6, least: 1.5e-6 }

/** A word as the model learns it: its rows, and the stress of each vowel sound. */
export interface Lesson {
  readonly path: readonly number[]
  readonly stress: readonly number[]
}

export function learnModel(lessons: readonly Lesson[], rows: readonly Row[], limits: ModelLimits): Uint8Array {
  const symbols = new Map<string, number>()
  const runs = countRuns(limits.longest)
  for (const lesson of lessons) addRun(runs, [EDGE, ...toSymbols(lesson, rows, symbols), EDGE])
  const model = smooth(runs, symbols.size + 2)
  prune(runs, model, limits.least)
  return writeModel(runs, model, [...symbols.keys()])
}

/** Rows as numbers from 2: each row with each stress of its vowels is one. Second stress is as good as main stress here. */
function toSymbols({ path, stress }: Lesson, rows: readonly Row[], symbols: Map<string, number>): number[] {
  let vowels = 0
  return path.map((id) => {
    if (id === CLOSE) return CLOSE_SYMBOL
    const count = rows[id]?.phones.filter(isVowel).length ?? 0
    const marks = stress.slice(vowels, vowels + count).map((mark) => (mark === 0 ? 0 : 1))
    vowels += count
    const name = `${id} ${marks.join('')}`
    const known = symbols.get(name) ?? symbols.size + 2
    symbols.set(name, known)
    return known
  })
}

export interface Smoothed {
  /** By run: cost in nats of its last symbol after the others. */
  readonly costs: Float64Array
  /** By run: cost of falling back from it as a context. */
  readonly backs: Float64Array
  /** By run: whether it is kept. */
  readonly kept: Uint8Array
}

/** Keeps the runs that say something their shorter runs do not, and sets the costs of falling back anew. */
function prune(runs: Runs, { costs, backs, kept }: Smoothed, least: number): void {
  const { parent, suffix, depth, count } = runs
  const size = parent.length
  const total = count.reduce((sum, one, run) => sum + (depth[run] === 1 ? one : 0), 0)
  const at = (list: ArrayLike<number>, k: number | undefined): number => list[k ?? 0] ?? 0
  for (const run of runs.byDepth.toReversed()) {
    const fallen = at(backs, parent[run]) + at(costs, suffix[run])
    const gain = (at(count, run) / total) * Math.abs(fallen - at(costs, run))
    if (at(depth, run) > 1 && !kept[run] && gain <= least) continue
    kept[run] = 1
    // A run stands on its beginning, which is its context, and on its end, to which it falls back.
    kept[parent[run] ?? 0] = 1
    kept[suffix[run] ?? 0] = 1
  }
  const own = new Float64Array(size)
  const shorter = new Float64Array(size)
  for (let run = 1; run < size; run++) {
    if (!kept[run] || at(depth, run) < 2) continue
    const context = parent[run] ?? 0
    own[context] = at(own, context) + Math.exp(-at(costs, run))
    shorter[context] = at(shorter, context) + Math.exp(-at(costs, suffix[run]))
  }
  for (let run = 1; run < size; run++) {
    const left = Math.max(1e-6, 1 - at(own, run)) / Math.max(1e-6, 1 - at(shorter, run))
    backs[run] = at(own, run) === 0 ? 0 : -Math.log(left)
  }
}
