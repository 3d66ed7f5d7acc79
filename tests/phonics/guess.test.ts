// The search for the likeliest readings of a word, with a model whose costs are written down here, so that each figure can be worked out by hand: a cost is the
// negative logarithm of a probability, and what sounds alike adds up.

import { describe, expect, it } from 'vitest'
import { guessPaths } from '../../src/phonics/guess/guess.ts'
import { CLOSE_SYMBOL, type Context, EDGE, type GuessModel } from '../../src/phonics/guess/model.ts'
import { CLOSE, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'

type Known = readonly [row: number, stress: readonly (0 | 1)[], cost: number]

/** Ends cost a half, a closing e a quarter. Without `forgets` each history is a context of its own; with it they are all one. */
function makeModel(known: readonly Known[], forgets = false): GuessModel {
  const nodes = new Map<string, number>()
  const toContext = (symbols: readonly number[]): Context => {
    const name = forgets ? '' : symbols.join()
    if (!nodes.has(name)) nodes.set(name, nodes.size)
    return { symbols, node: nodes.get(name) ?? 0, backs: [] }
  }
  const numbers = known.map(([row], at) => ({ row, number: at + 2 }))
  return {
    symbols: [undefined, undefined, ...known.map(([row, stress]) => ({ row, stress }))],
    byRow: new Map(
      known.map(([row]) => [row, numbers.filter((one) => one.row === row).map(({ number }) => number)] as const),
    ),
    start: toContext([]),
    cost: (_, symbol) => (symbol === EDGE ? 0.5 : symbol === CLOSE_SYMBOL ? 0.25 : (known[symbol - 2]?.[2] ?? NaN)),
    after: (context, symbol) => toContext([...context.symbols, symbol]),
  }
}

const [SHORT, LONG, B, DOUBLE, SPLIT] = [0, 1, 2, 3, 4]
const set = toRowSet(readRows('a\tAE\na\tEY\nb\tB\nbb\tB\na_e\tEY'))
const KNOWN: readonly Known[] = [
  [SHORT, [1], 1],
  [SHORT, [0], 2],
  [LONG, [1], 3],
  [B, [], 1],
  [DOUBLE, [], 2],
  [SPLIT, [1], 0.5],
]

describe('the likeliest readings', () => {
  it('come first; what differs in stress alone is one, as likely as both together', () => {
    const [first, second, ...more] = guessPaths(set, makeModel(KNOWN), 'ab', 10)
    const all = 1 + Math.exp(-1) + Math.exp(-2)
    expect(more).toEqual([])
    expect(first).toMatchObject({ path: [SHORT, B], stress: [1] })
    expect(first?.cost).toBeCloseTo(2.5 - Math.log(1 + Math.exp(-1)))
    expect(first?.share).toBeCloseTo((1 + Math.exp(-1)) / all)
    expect(second).toMatchObject({ path: [LONG, B], stress: [1] })
    expect(second?.cost).toBeCloseTo(4.5)
    expect(second?.share).toBeCloseTo(Math.exp(-2) / all)
  })

  it('are no more than were asked for, and none of a word without letters that the table knows', () => {
    expect(guessPaths(set, makeModel(KNOWN), 'ab', 1).map(({ path }) => path)).toEqual([[SHORT, B]])
    expect(guessPaths(set, makeModel(KNOWN), 'az', 10)).toEqual([])
  })

  it('close a split vowel, which has one stress and may not stay open', () => {
    const found = guessPaths(set, makeModel(KNOWN), 'abe', 10)
    expect(found).toEqual([{ path: [SPLIT, B, CLOSE], stress: [1], cost: 2.25, share: 1 }])
    expect(guessPaths(set, makeModel(KNOWN.slice(5)), 'ab', 10)).toEqual([])
  })

  it('may end with a long vowel as with any', () => {
    expect(guessPaths(set, makeModel(KNOWN), 'ba', 10).map(({ path }) => path)).toEqual([
      [B, SHORT],
      [B, LONG],
    ])
  })

  it('may be those of several ways together where the likeliest single way is another', () => {
    // Three ways to say it short are likelier together than the one long one.
    const model = makeModel([
      [LONG, [1], 1],
      [SHORT, [1], 1.5],
      [SHORT, [0], 1.5],
      [SHORT, [0], 1.5],
    ])
    expect(guessPaths(set, model, 'a', 10).map(({ path }) => path)).toEqual([[SHORT], [LONG]])
  })

  it('leave out a row that the model has never seen', () => {
    const model = makeModel(KNOWN.filter(([row]) => row !== SHORT))
    expect(guessPaths(set, model, 'ab', 10).map(({ path, share }) => [path, share])).toEqual([[[LONG, B], 1]])
  })
})

describe('letters that belong together', () => {
  it('are not parted, even where that were cheaper', () => {
    const cheap = makeModel(KNOWN.map(([row, stress, cost]) => [row, stress, row === DOUBLE ? 9 : cost]))
    expect(guessPaths(set, cheap, 'abb', 10).map(({ path }) => path)).toEqual([
      [SHORT, DOUBLE],
      [LONG, DOUBLE],
    ])
  })

  it('are parted where nothing else can be said', () => {
    const model = makeModel(KNOWN.filter(([row]) => row !== DOUBLE))
    expect(guessPaths(set, model, 'abb', 10).map(({ path }) => path)).toEqual([
      [SHORT, B, B],
      [LONG, B, B],
    ])
  })
})

describe('of readings that the model tells apart no more', () => {
  const only = (known: readonly Known[]) => guessPaths(set, makeModel(known, true), 'ab', 10)

  it('the better is kept, whether it comes first', () => {
    expect(only(KNOWN)).toEqual([{ path: [SHORT, B], stress: [1], cost: 2.5, share: 1 }])
  })

  it('or later', () => {
    const known = KNOWN.map(([row, stress, cost]): Known => [row, stress, row === LONG ? 0.5 : cost])
    expect(only(known)).toEqual([{ path: [LONG, B], stress: [1], cost: 2, share: 1 }])
  })
})

describe('of very many readings', () => {
  const costs = Array.from({ length: 14 }, (_, at) => 1 + at / 10)
  const toSum = (count: number) => costs.slice(0, count).reduce((sum, cost) => sum + Math.exp(1 - cost), 0)

  it.each([
    ['best first', costs],
    ['worst first', costs.toReversed()],
    ['in no order', costs.toSorted((x, y) => Math.sin(x * 99) - Math.sin(y * 99))],
  ])('the ten best count, %s', (_, order) => {
    const model = makeModel(order.map((cost) => [SHORT, [1], cost]))
    const found = guessPaths(set, model, 'a', 10)
    expect(found).toHaveLength(1)
    expect(found[0]?.cost).toBeCloseTo(1.5 - Math.log(toSum(10)))
  })

  it('no more than twelve are followed from letter to letter', () => {
    // Of thirteen at the first letter the dearest is dropped, so that its cheap end is never reached.
    const many = costs.slice(0, 13).map((cost): Known => [SHORT, [1], cost])
    const model = makeModel([...many, [B, [], 1]])
    const dear = { ...model, cost: toCostAfter(model) }
    expect(guessPaths(set, dear, 'ab', 10)[0]?.cost).toBeCloseTo(dearest(12))
  })

  /** A b is cheap behind the two dearest, the twelfth and the thirteenth, and dear behind all others. */
  const toCostAfter =
    (model: GuessModel) =>
    (context: Context, symbol: number): number =>
      symbol === 15 ? ((context.symbols.at(-1) ?? 0) >= 13 ? 1 : 50) : model.cost(context, symbol)
  const dearest = (at: number): number => (costs[at - 1] ?? NaN) + 1.5
})
