// Writes the guesser's model: what its bytes mean is told in `src/phonics/guess/model.ts`.

import { HEADER, LEVELS, MOST_SYMBOLS, PLACE, PLACE_BYTES, toPlaces } from '../../src/phonics/guess/model.ts'
import { toU24 } from '../../src/phonics/u24.ts'
import type { Smoothed } from './guess-model.ts'
import type { Runs } from './guess-model-runs.ts'

interface Node {
  readonly symbol: number
  readonly run: number
  readonly children: Map<number, Node>
}

/** @param symbols `row stress` of each symbol from 2 */
export function writeModel(runs: Runs, model: Smoothed, symbols: readonly string[]): Uint8Array {
  if (symbols.length + 2 > MOST_SYMBOLS) throw new Error(`${symbols.length} symbols do not fit ten bits`)
  const nodes = inLevels(toBackwards(runs, model))
  const kept = nodes.map(({ node }) => node.run)
  const costs = toLevels(kept.map((run) => model.costs[run] ?? 0))
  const backs = toLevels(kept.map((run) => model.backs[run] ?? 0))
  const names = new TextEncoder().encode(symbols.join('\n'))
  const end = HEADER + names.length + nodes.length * 3
  const bytes = new Uint8Array(end + PLACE_BYTES * Math.ceil((nodes.length + 1) / PLACE))
  const view = new DataView(bytes.buffer)
  view.setUint32(0, names.length, true)
  view.setUint32(4, nodes.length, true)
  costs.forEach((cost, k) => {
    view.setFloat32(8 + k * 4, cost, true)
  })
  backs.forEach((back, k) => {
    view.setFloat32(8 + (LEVELS + k) * 4, back, true)
  })
  bytes.set(names, HEADER)
  nodes.forEach(({ node, isLast }, k) => {
    const at = HEADER + names.length + k * 3
    const cost = findLevel(costs, model.costs[node.run] ?? 0)
    const back = findLevel(backs, model.backs[node.run] ?? 0)
    bytes[at] = node.symbol & 255
    bytes[at + 1] = (node.symbol >> 8) | (isLast ? 4 : 0) | (node.children.size > 0 ? 8 : 0) | ((cost & 15) << 4)
    bytes[at + 2] = (cost >> 4) | (back << 2)
  })
  toPlaces(bytes.subarray(HEADER + names.length, end)).forEach((place, k) => {
    bytes.set(toU24(place), end + k * PLACE_BYTES)
  })
  return bytes
}

/** The kept runs as a tree from their last symbol backwards. */
function toBackwards({ symbol, parent }: Runs, { kept }: Smoothed): Node {
  const root: Node = { symbol: -1, run: 0, children: new Map() }
  const make = (run: number): Node => {
    let node = root
    for (let at = run; at > 0; at = parent[at] ?? 0) {
      const next = symbol[at] ?? 0
      const child = node.children.get(next) ?? { symbol: next, run: -1, children: new Map() }
      node.children.set(next, child)
      node = child
    }
    return node
  }
  for (let run = 1; run < parent.length; run++) {
    if (kept[run]) Object.assign(make(run), { run })
  }
  return root
}

/** Level by level, sisters together in the order of their symbols. */
function inLevels(root: Node): { node: Node; isLast: boolean }[] {
  const all: { node: Node; isLast: boolean }[] = []
  let level: Node[] = [root]
  while (level.length > 0) {
    const next: Node[] = []
    for (const { children } of level) {
      const sisters = [...children.values()].sort((x, y) => x.symbol - y.symbol)
      sisters.forEach((node, k) => {
        all.push({ node, isLast: k === sisters.length - 1 })
        next.push(node)
      })
    }
    level = next
  }
  return all
}

/** As many values as a field can name, each the middle of as many costs as the others. 0 is exact: most runs have no cost of falling back. */
function toLevels(costs: readonly number[]): readonly number[] {
  const sorted = costs.filter((cost) => cost !== 0).sort((x, y) => x - y)
  const levels = Array.from({ length: LEVELS - 1 }, (_, k) => {
    const from = Math.floor((k * sorted.length) / (LEVELS - 1))
    const to = Math.max(from + 1, Math.floor(((k + 1) * sorted.length) / (LEVELS - 1)))
    const part = sorted.slice(from, to)
    return part.length === 0 ? 0 : part.reduce((sum, cost) => sum + cost, 0) / part.length
  })
  return [...levels, 0].sort((x, y) => x - y)
}

function findLevel(levels: readonly number[], cost: number): number {
  let low = 0
  let high = levels.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if ((levels[middle] ?? 0) < cost) low = middle + 1
    else high = middle
  }
  const below = levels[low - 1]
  return below !== undefined && cost - below < (levels[low] ?? 0) - cost ? low - 1 : low
}
