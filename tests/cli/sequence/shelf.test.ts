// `battledore sequence --shelf`: which steps have too few words for a book, with what they offer, and how many books there are.

import { afterEach, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { ENOUGH } from '../../../src/finder/step-words.ts'
import { createWorld, type TestWorld } from '../io.ts'
import { compileSchema } from '../vocabulary-world.ts'

let world: TestWorld
afterEach(() => world?.remove())

const OWN = `name: own
steps:
  - id: one
    teach: [a as in cat, m as in mat, t as in mat]
  - id: two
    teach: [c as in cat, p as in pan, n as in nap, h as in hat, s as in sat, i as in sit, d as in dig]
  - id: three
    sight words: [the]
`

interface Counted {
  readonly step: string
  readonly words: number
  readonly things: number
  readonly doing: number
  readonly others: number
  readonly brings: readonly string[]
  readonly offers: readonly string[]
  readonly lacks: readonly string[]
  readonly books: number | null
}

async function count(files: Readonly<Record<string, string>>, ...args: readonly string[]): Promise<readonly Counted[]> {
  world = createWorld(files)
  expect([await main(['sequence', ...args, '--format', 'json'], world.io), world.err()]).toEqual([0, ''])
  const value = JSON.parse(world.out()) as { readonly steps: readonly Counted[] }
  const validate = compileSchema('step-words')
  expect(validate(value), JSON.stringify(validate.errors)).toBe(true)
  return value.steps
}

it('counts what a child can read with three letters, as can be told by hand', async () => {
  const [one, two, three] = await count({ 'own.yaml': OWN }, 'own.yaml', '--shelf')
  // Of a, m and t: all words of two or more letters that a dictionary for the first school years has.
  expect(one?.brings.toSorted()).toEqual(['am', 'at', 'mat'])
  expect(one?.lacks).toEqual(['words', 'things', 'doing', 'brings'])
  expect(one?.books).toBeNull()
  expect(two?.brings).toEqual(expect.arrayContaining(['cat', 'pin', 'hand', 'stand', 'sand']))
  expect(two?.lacks).toEqual([])
  // A step of words by heart need not bring many.
  expect([three?.brings, three?.lacks]).toEqual([['the'], []])
})

it.each(['series', 'england', 'common-core'])(
  'adds up in %s, and marks a step just where it lacks something',
  async (name) => {
    const steps = await count({}, name, '--shelf')
    let sum = 0
    for (const { words, things, doing, others, brings, lacks, offers } of steps) {
      sum += brings.length
      expect([words, things + doing + others]).toEqual([sum, sum])
      expect(new Set(offers).size).toBe(offers.length)
      for (const lack of lacks)
        expect({ words, things, doing, brings: brings.length }[lack] ?? 0).toBeLessThan(ENOUGH[lack as 'words'])
      if (words < ENOUGH.words) expect(lacks).toContain('words')
    }
  },
)

it('offers only words that the engine reads at the step', async () => {
  const steps = await count({ 'own.yaml': OWN }, 'own.yaml', '--shelf')
  for (const { step, offers } of steps) {
    const before = world.out().length
    world.write({ 'a.md': `---\nsequence: own.yaml\nstep: ${step}\n---\n\n${offers.join(' ')}\n` })
    expect(await main(['check', 'a.md', '--format', 'json'], world.io)).toBe(0)
    const { files } = JSON.parse(world.out().slice(before)) as {
      files: { totals: { unreadable: number; words: number } }[]
    }
    expect(files[0]?.totals).toMatchObject({ unreadable: 0, words: offers.length })
  }
})

it('counts the books that are for a step of this sequence, and only those', async () => {
  const story = (top: string) => `---\n${top}\n---\n\nA mat.\n`
  const steps = await count(
    {
      'own.yaml': OWN,
      'books/a.md': story('sequence: ../own.yaml\nstep: two'),
      'books/b.md': story('sequence: ../own.yaml\nstep: TWO'),
      'books/c.md': story('step: pink-2'),
      'books/d.md': 'No step.\n',
    },
    'own.yaml',
    '--shelf',
    'books',
  )
  expect(steps.map(({ books }) => books)).toEqual([0, 2, 0])
})

it('tells a person which steps are thin and what they offer, or that none is', async () => {
  world = createWorld({ 'own.yaml': OWN })
  expect(await main(['sequence', 'own.yaml', '--shelf'], world.io)).toBe(0)
  expect(world.out()).toMatch(/^one +3 +1 +0 +2 +3 +\*$/m)
  expect(world.out()).toContain('\none\n  Only 3 words, 1 thing, 0 doing words and 3 new words. It offers at, am, mat.')
  const before = world.out().length
  await main(['sequence', 'england', '--shelf'], world.io)
  expect(world.out().slice(before)).toContain('Every step has enough words for a book.')
  expect(await main(['sequence', 'own.yaml', '--shelf', 'nowhere'], world.io)).toBe(2)
  expect(world.err()).toMatch(/^battledore: .*nowhere.*\n$/)
})
