// The guesser's model as it is read in place, against a plain reading of the same bytes by what the head of `model.ts` says of them.

import { describe, expect, it } from 'vitest'
import { learnModel } from '../../scripts/build/guess-model.ts'
import { CLOSE_SYMBOL, type Context, EDGE, HEADER, LEVELS, openModel } from '../../src/phonics/guess/model.ts'
import { CLOSE } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'

const rows = readRows('a\tAE\na\tEY\na_e\tEY\nb\tB\nc\tK\ne\tEH\nk\tK\ns\tS\nire\tAY ER\nt\tT\n')

/** Numbers that look like chance and are the same each time. */
function makeDice(seed: number): (sides: number) => number {
  let state = seed
  return (sides) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return Math.floor((state / 2_147_483_648) * sides)
  }
}

/** Made words of three to seven rows, each vowel sound with its stress. */
const lessons = (() => {
  const roll = makeDice(7)
  return Array.from({ length: 150 }, () => {
    const path = Array.from({ length: 3 + roll(4) }, () => roll(rows.length))
    if (roll(3) === 0) path.push(CLOSE)
    const vowels = path.reduce((sum, id) => sum + (id === 8 ? 2 : (rows[id]?.vowel ?? false) ? 1 : 0), 0)
    return { path, stress: Array.from({ length: vowels }, () => roll(2)) }
  })
})()

const bytes = learnModel(lessons, rows, { longest: 6, least: 0 })
const model = openModel(bytes)()

interface Node {
  readonly symbol: number
  readonly isLast: boolean
  readonly hasChildren: boolean
  readonly cost: number
  readonly back: number
  readonly children: Map<number, Node>
}

/** The tree, node by node: the children of each that has some come one family after the other. */
function readTree(): { readonly root: Map<number, Node>; readonly names: readonly string[]; readonly count: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset)
  const [length, count] = [view.getUint32(0, true), view.getUint32(4, true)]
  const names = new TextDecoder().decode(bytes.subarray(HEADER, HEADER + length)).split('\n')
  const nodes = Array.from({ length: count }, (_, at): Node => {
    const [one = 0, two = 0, three = 0] = bytes.subarray(HEADER + length + at * 3)
    // Ten bits, one, one, six and six, the lowest first.
    const bits = one + two * 256 + three * 65_536
    return {
      symbol: bits % 1024,
      isLast: Math.floor(bits / 1024) % 2 === 1,
      hasChildren: Math.floor(bits / 2048) % 2 === 1,
      cost: view.getFloat32(8 + (Math.floor(bits / 4096) % 64) * 4, true),
      back: view.getFloat32(8 + (LEVELS + Math.floor(bits / 262_144)) * 4, true),
      children: new Map(),
    }
  })
  let next = 0
  const adopt = (children: Map<number, Node>): void => {
    for (;;) {
      const node = nodes[next++] as Node
      children.set(node.symbol, node)
      if (node.isLast) return
    }
  }
  const root = new Map<number, Node>()
  adopt(root)
  for (const node of nodes) if (node.hasChildren) adopt(node.children)
  expect(next).toBe(count)
  return { root, names, count }
}

const tree = readTree()

/** The nodes of a run, the last symbol first, as far as the tree has it. */
function follow(run: readonly number[]): readonly Node[] {
  const found: Node[] = []
  for (let children = tree.root; found.length < run.length; ) {
    const node = children.get(run[found.length] as number)
    if (node === undefined) break
    found.push(node)
    children = node.children
  }
  return found
}

function costOf(history: readonly number[], symbol: number): number {
  const known = follow(history)
  const found = follow([symbol, ...history.slice(0, known.length)])
  const last = found.at(-1)
  if (last === undefined) return 16
  return last.cost + known.slice(found.length - 1).reduce((sum, { back }) => sum + back, 0)
}

const symbols = Array.from({ length: tree.names.length + 4 }, (_, at) => at)

describe('the model', () => {
  it('is large enough to be a test', () => {
    expect(tree.count).toBeGreaterThan(500)
    expect(tree.names.length).toBeGreaterThan(12)
  })

  it('has the symbols of each row, with the stress of their vowels', () => {
    expect(model.symbols.slice(0, 2)).toEqual([undefined, undefined])
    expect(model.symbols.slice(2)).toEqual(
      tree.names.map((name) => {
        const [row, stress = ''] = name.split(' ')
        return { row: Number(row), stress: [...stress].map(Number) }
      }),
    )
    for (const [row, numbers] of model.byRow)
      expect(numbers).toEqual(tree.names.flatMap((name, at) => (Number(name.split(' ')[0]) === row ? [at + 2] : [])))
    expect([...model.byRow.keys()].sort()).toEqual(
      [...new Set(lessons.flatMap(({ path }) => path))].filter((id) => id !== CLOSE).sort(),
    )
  })

  it.each([1, 2, 3])('gives each symbol its cost after any others, as the plain reading does: walk %i', (seed) => {
    const roll = makeDice(seed)
    let longest = 0
    for (let walk = 0; walk < 12; walk++) {
      let context: Context = model.start
      let history: readonly number[] = [EDGE]
      for (let step = 0; step < 9; step++) {
        for (const symbol of symbols) expect(model.cost(context, symbol)).toBeCloseTo(costOf(history, symbol), 6)
        // Every other step goes on with what was learnt, so that long runs are met.
        const drawn = Array.from({ length: step % 2 === 0 ? 1 : 40 }, () => CLOSE_SYMBOL + roll(tree.names.length + 2))
        const length = (one: number) => follow([one, ...history]).length
        const symbol = drawn.reduce((best, one) => (length(one) > length(best) ? one : best))
        context = model.after(context, symbol)
        history = [symbol, ...history].slice(0, follow([symbol, ...history]).length)
        expect(context.symbols).toEqual(history)
        longest = Math.max(longest, history.length)
      }
    }
    expect(longest).toBeGreaterThan(3)
  })

  it('makes one context of what it tells apart no more', () => {
    const read = (...run: number[]) => run.reduce((context, symbol) => model.after(context, symbol), model.start)
    expect(read(2, 3)).toBe(read(2, 3))
    expect(read(2, 999, 3).node).toBe(read(999, 3).node)
    expect(read(999)).toMatchObject({ symbols: [], backs: [0], node: -1 })
  })

  it('of no bytes knows nothing', () => {
    const empty = openModel(new Uint8Array())()
    expect([empty.symbols, [...empty.byRow]]).toEqual([[undefined, undefined], []])
    expect(empty.cost(empty.start, EDGE)).toBe(16)
    expect(empty.after(empty.start, 5).symbols).toEqual([])
  })

  it('is laid out once', () => {
    const open = openModel(bytes)
    expect(open()).toBe(open())
  })
})
