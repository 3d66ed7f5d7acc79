// Reads a word that the dictionary lacks by its letters: the likeliest paths through the table, by the learnt model.

import { CLOSE, LONG, OPEN, type RowSet, STATES, toArcs } from '../lattice.ts'
import { EDGE, type GuessModel, toSymbol } from './model.ts'

export interface Guess {
  /** Row ids, CLOSE for a closing e. */
  readonly path: readonly number[]
  /** Nats; lower is likelier. */
  readonly cost: number
}

interface Walk {
  readonly cost: number
  readonly a: number
  readonly b: number
  readonly c: number
  readonly row: number
  readonly before: Walk | undefined
}

/** How many walks are kept at each letter: more finds no better pronunciations on held-out words. */
const BEAM = 12

/** Up to `most` pronunciations, likeliest first. Time grows with the length of the word. */
export function guessPaths(set: RowSet, model: GuessModel, word: string, most: number): Guess[] {
  const { arcs } = toArcs(set, word, undefined)
  const beams = new Map<number, Walk[]>([[0, [{ cost: 0, a: EDGE, b: EDGE, c: EDGE, row: EDGE, before: undefined }]]])
  for (const arc of arcs) {
    const walks = beams.get(arc.from)
    if (!walks) continue
    const next = beams.get(arc.to) ?? []
    beams.set(arc.to, next)
    const symbol = toSymbol(arc.row)
    for (const walk of walks) {
      const cost = walk.cost + model.cost(walk.a, walk.b, walk.c, symbol)
      keep(next, { cost, a: walk.b, b: walk.c, c: symbol, row: arc.row, before: walk })
    }
  }
  const end = word.length * STATES
  return [...(beams.get(end + OPEN) ?? []), ...(beams.get(end + LONG) ?? [])]
    .map((walk) => ({ walk, cost: walk.cost + model.cost(walk.a, walk.b, walk.c, EDGE) }))
    .sort((x, y) => x.cost - y.cost)
    .slice(0, most)
    .map(({ walk, cost }) => ({ path: toPath(walk), cost }))
}

/** Silent letters are no plain sound. */
const SILENT = 4

/**
 * The pronunciation of someone who knows what each group of letters mostly says and nothing else: the likeliest rows, wherever
 * they stand. A child reads an invented name so: `Zub` as z·u·b.
 */
export function guessPlainPath(set: RowSet, model: GuessModel, word: string): Guess | undefined {
  const { arcs } = toArcs(set, word, undefined)
  const best = new Map<number, Walk>([[0, { cost: 0, a: EDGE, b: EDGE, c: EDGE, row: EDGE, before: undefined }]])
  for (const arc of arcs) {
    const before = best.get(arc.from)
    if (!before) continue
    const price =
      arc.row === CLOSE
        ? arc.inside
          ? SILENT
          : 0
        : model.plain(toSymbol(arc.row)) + (set.rows[arc.row]?.phones.length === 0 ? SILENT : 0)
    const cost = before.cost + price
    if (cost < (best.get(arc.to)?.cost ?? Infinity))
      best.set(arc.to, { cost, a: EDGE, b: EDGE, c: EDGE, row: arc.row, before })
  }
  const end = word.length * STATES
  const [walk] = [best.get(end + OPEN), best.get(end + LONG)]
    .filter((one) => one !== undefined)
    .sort((x, y) => x.cost - y.cost)
  return walk && { path: toPath(walk), cost: walk.cost }
}

/** Puts a walk in its place, best first; of two with the same last rows only the better is kept. */
function keep(beam: Walk[], walk: Walk): void {
  if (beam.length >= BEAM && walk.cost >= (beam[beam.length - 1]?.cost ?? 0)) return
  const twin = beam.findIndex((one) => one.a === walk.a && one.b === walk.b && one.c === walk.c)
  if (twin >= 0) {
    if ((beam[twin]?.cost ?? 0) <= walk.cost) return
    beam.splice(twin, 1)
  }
  let at = beam.length
  while (at > 0 && (beam[at - 1]?.cost ?? 0) > walk.cost) at--
  beam.splice(at, 0, walk)
  if (beam.length > BEAM) beam.pop()
}

function toPath(walk: Walk): number[] {
  const path: number[] = []
  for (let at: Walk | undefined = walk; at?.before; at = at.before) path.push(at.row)
  return path.reverse()
}
