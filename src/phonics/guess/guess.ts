// Reads a word that the dictionary lacks by its letters: the likeliest paths through the table, by the learnt model.

import { type Arc, CLOSE, LONG, OPEN, type RowSet, STATES, toArcs } from '../lattice.ts'
import { findBonds } from './bonds.ts'
import { CLOSE_SYMBOL, type Context, EDGE, type GuessModel } from './model.ts'

export interface Guess {
  /** Row ids, CLOSE for a closing e. */
  readonly path: readonly number[]
  /** One mark for each vowel sound. */
  readonly stress: readonly (0 | 1)[]
  /** Nats; lower is likelier. */
  readonly cost: number
  /** The share of this pronunciation among all that were found for the word, stress apart. */
  readonly share: number
}

interface Walk {
  readonly cost: number
  readonly context: Context
  readonly symbol: number
  readonly before: Walk | undefined
}

/** How many walks are kept at each letter: more finds no better pronunciations on held-out words. */
const BEAM = 12
const MOST_FOUND = 10
const NO_SYMBOLS: readonly number[] = []
const CLOSES: readonly number[] = [CLOSE_SYMBOL]

/** Up to `most` pronunciations that sound different, likeliest first. Time grows with the length of the word. */
export function guessPaths(set: RowSet, model: GuessModel, word: string, most: number): readonly Guess[] {
  const bonds = findBonds(word)
  const found = walkLetters(set, model, word, bonds)
  return mergeAlike(found.length > 0 ? found : walkLetters(set, model, word, new Set()), set, model).slice(0, most)
}

/** @param bonds places between letters where no row may begin */
function walkLetters(set: RowSet, model: GuessModel, word: string, bonds: ReadonlySet<number>): readonly Walk[] {
  const beams = new Map<number, Walk[]>([[0, [{ cost: 0, context: model.start, symbol: EDGE, before: undefined }]]])
  const end = word.length * STATES
  const isWhole = (state: number): boolean => state === end + OPEN || state === end + LONG
  for (const arc of keepEnding(toArcs(set, word, undefined).arcs, bonds, isWhole)) {
    const walks = beams.get(arc.from)
    if (!walks) continue
    const next = beams.get(arc.to) ?? []
    beams.set(arc.to, next)
    for (const symbol of arc.row === CLOSE ? CLOSES : (model.byRow.get(arc.row) ?? NO_SYMBOLS)) {
      for (const walk of walks) keep(next, walk, symbol, model)
    }
  }
  return [...(beams.get(end + OPEN) ?? []), ...(beams.get(end + LONG) ?? [])]
    .map((walk) => ({ ...walk, cost: walk.cost + model.cost(walk.context, EDGE) }))
    .sort((x, y) => x.cost - y.cost)
    .slice(0, MOST_FOUND)
}

/** The arcs by which some walk comes to its end, in their order: of most words a third do not, such as a split vowel before no e. */
function keepEnding(
  arcs: readonly Arc[],
  bonds: ReadonlySet<number>,
  isWhole: (state: number) => boolean,
): readonly Arc[] {
  const ending = new Set<number>()
  const kept: Arc[] = []
  for (let at = arcs.length - 1; at >= 0; at--) {
    const arc = arcs[at] as Arc
    if (bonds.has(Math.floor(arc.from / STATES)) || !(isWhole(arc.to) || ending.has(arc.to))) continue
    ending.add(arc.from)
    kept.push(arc)
  }
  return kept.reverse()
}

const costAt = (beam: readonly Walk[], place: number): number => beam[place]?.cost ?? 0

/** Puts a longer walk in its place, best first; of two that the model tells apart no more, only the better is kept. */
function keep(beam: Walk[], before: Walk, symbol: number, model: GuessModel): void {
  const cost = before.cost + model.cost(before.context, symbol)
  if (beam.length >= BEAM && cost >= costAt(beam, beam.length - 1)) return
  const context = model.after(before.context, symbol)
  let at = 0
  while (at < beam.length && !(beam[at]?.context.node === context.node && beam[at]?.symbol === symbol)) at++
  if (at < beam.length && costAt(beam, at) <= cost) return
  // What goes is the twin, or the last of a full beam. Searching with closures and splicing took half of the guesser's time.
  if (at === BEAM) at--
  for (; at > 0 && costAt(beam, at - 1) > cost; at--) beam[at] = beam[at - 1] as Walk
  beam[at] = { cost, context, symbol, before }
}

/** Walks that say the same are one pronunciation, as likely as all of them together; the likeliest one gives its letters. */
function mergeAlike(walks: readonly Walk[], set: RowSet, model: GuessModel): readonly Guess[] {
  const bySound = new Map<string, { walk: Walk; weight: number }>()
  const least = walks[0]?.cost ?? 0
  for (const walk of walks) {
    const sounds = toSymbols(walk)
      .flatMap((symbol) => set.rows[model.symbols[symbol]?.row ?? -1]?.phones ?? [])
      .join(' ')
    const known = bySound.get(sounds)
    const weight = Math.exp(least - walk.cost)
    if (known) known.weight += weight
    else bySound.set(sounds, { walk, weight })
  }
  const all = [...bySound.values()].reduce((sum, { weight }) => sum + weight, 0)
  return [...bySound.values()]
    .sort((x, y) => y.weight - x.weight)
    .map(({ walk, weight }) => ({
      path: toSymbols(walk).map((symbol) => model.symbols[symbol]?.row ?? CLOSE),
      stress: toSymbols(walk).flatMap((symbol) => model.symbols[symbol]?.stress ?? []),
      cost: least - Math.log(weight),
      share: weight / all,
    }))
}

function toSymbols(walk: Walk): number[] {
  const symbols: number[] = []
  for (let at: Walk | undefined = walk; at?.before; at = at.before) symbols.push(at.symbol)
  return symbols.reverse()
}
