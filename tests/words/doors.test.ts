// Every door by which the program proposes words is asked: no unfit word comes out of any, by the project's own list and by npm cuss (its words rated
// 2, but for those that the project clears with a reason), and what a school adds and clears holds at each.

import { readFileSync } from 'node:fs'
import { cuss } from 'cuss'
import { afterAll, describe, expect, it } from 'vitest'
import { readOwnRows } from '../../scripts/build/unfit.ts'
import { main } from '../../src/cli/main.ts'
import { findCompleter } from '../../src/finder/readable-words.ts'
import { isFine } from '../../src/words/fitness.ts'
import { createWorld } from '../cli/io.ts'
import { filesInMemory, openDesk } from '../desk/core/host.ts'
import { testSequence, testTable, testWords } from '../finder/sources.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'
import { readPdf } from '../print/read-back.ts'

/** What a school adds, of the most used; and what it clears. */
const ADDED = ['cat', 'day', 'house', 'little', 'look', 'mother', 'night', 'rain', 'run', 'train', 'tree']
const CLEARED = ['gun', 'wine']
const SETTINGS = `step: green-14\nunfit words: [${ADDED.join(', ')}]\nfit words: [${CLEARED.join(', ')}]\n`
/** Many words that have something to stand for them. */
const STORY = `# A day

The huge beast was weary. He shouted at the children. The maiden rushed to her residence. They began to weep in the evening.

---

She observed a tiny kitten near the stream. The rooster woke the entire village. The infant was terrified of the storm.
`
const STEPS = ['pink-5', 'blue-4', 'green-4', 'green-14'] as const

const world = createWorld({
  'battledore.yaml': SETTINGS,
  'tam.yaml': 'name: Tam\nstep: green-2\n',
  'shelf/a-day.md': STORY,
})
afterAll(() => world.remove())

async function run(...args: string[]): Promise<string> {
  const before = world.out().length
  const code = await main(args, world.io)
  expect(code, args.join(' ')).toBeLessThan(2)
  return world.out().slice(before)
}
const json = async (...args: string[]) => JSON.parse(await run(...args, '--format', 'json'))
const plain = async (...args: string[]): Promise<string[]> => (await run(...args, '--format', 'plain')).split(/\s+/)
/** One after the other: they write to one output. */
async function inTurn<Item, Result>(items: readonly Item[], ask: (item: Item) => Promise<Result>): Promise<Result[]> {
  const found: Result[] = []
  for (const item of items) found.push(await ask(item))
  return found
}
const at = (step: string) => ['--step', step]

const own = testWords().fitness({ add: ADDED, clear: CLEARED })
const cleared = new Set(readOwnRows().flatMap(({ word, kind }) => (isFine(kind) ? [word] : [])))
const RATED = new Set(
  Object.entries(cuss).flatMap(([word, rating]) => (rating === 2 && !cleared.has(word) ? [word] : [])),
)

function findUnfit(words: readonly string[]): string[] {
  const plain = words.map((word) => word.toLowerCase().replace(/[’]/g, "'"))
  return plain.filter((word) => !own.isFit(word) || (RATED.has(word) && !CLEARED.includes(word)))
}

/** Each door with the words that it gives. */
const DOORS: Readonly<Record<string, () => Promise<readonly string[]>>> = {
  lists: async () => (await inTurn(STEPS, (step) => plain('words', ...at(step), '--count', 'all'))).flat(),
  'lists that are shuffled': () => plain('words', ...at('green-14'), '--order', 'shuffled', '--count', 'all'),
  rhymes: () => plain('words', ...at('green-14'), '--rhymes-with', 'hat', '--count', 'all'),
  boxes: async () =>
    (
      await inTurn(['a', 'e', 'i', 'o', 'u'], (vowel) =>
        plain('words', ...at('green-14'), '--set', 'box', '--vowel', vowel, '--count', '60'),
      )
    ).flat(),
  'mixed boxes': () => plain('words', ...at('green-14'), '--set', 'mixed', '--count', '30'),
  pairs: async () =>
    (
      await inTurn(['a,e', 'a,i', 'a,o', 'a,u', 'e,i', 'i,o', 'o,u'], (two) =>
        plain('words', ...at('green-14'), '--set', 'contrast', '--sounds', two, '--count', 'all'),
      )
    ).flat(),
  'the sheet and its names': async () => {
    const all = await inTurn(STEPS, (step) => json('words', ...at(step), '--as', 'sheet', '--count', 'all'))
    return all.flatMap(({ words, bank }) => [...words.map((one: { word: string }) => one.word), ...bank.names])
  },
  'print words': async () => {
    const kinds = ['tags', 'list', 'slips', 'cards', 'wall', 'bank']
    const found: string[] = []
    for (const kind of kinds) {
      await run('print', kind, ...at('green-14'), '--out', `${kind}.pdf`, ...(kind === 'bank' ? [] : ['--count', '60']))
      const { sheets } = await readPdf(readFileSync(`${world.cwd}/${kind}.pdf`))
      found.push(...sheets.flatMap(({ words }) => words.flatMap(({ text }) => text.split(/[^\p{L}']+/u))))
    }
    return found.filter((word) => word !== '' && !SAID.has(word.toLowerCase()))
  },
  offers: async () => {
    const found: string[] = []
    for (const step of STEPS) {
      const { files } = await json('check', 'shelf/a-day.md', ...at(step))
      found.push(...files.flatMap((file: Checked) => file.messages.flatMap(({ suggestions }) => suggestions)))
    }
    return found.flatMap((offer) => offer.split(' '))
  },
  fix: async () => {
    const edits = await run('fix', 'shelf/a-day.md', '--dry-run', ...at('green-4'))
    const before = new Set(STORY.toLowerCase().split(/[^a-z]+/))
    const added = edits.split('\n').filter((line) => /^\+[^+]/.test(line))
    return added
      .flatMap((line) => line.toLowerCase().split(/[^a-z']+/))
      .filter((word) => word !== '' && !before.has(word))
  },
  'a lesson plan': async () => {
    const found: string[] = []
    for (const what of ['ai as in rain', 'igh as in night', 'a_e as in cake', 'th as in thin']) {
      const { plan } = await json('next', 'tam.yaml', 'shelf', '--plan', '--teach', what)
      found.push(...toWords([plan.examples, plan.box.words, plan.list, plan.slips]))
    }
    return found
  },
  'words for a book': async () => toWords(await json('sequence', 'series', '--shelf')),
  completions: async () => {
    const sources = {
      lexicon: testLexicon(),
      data: testWords(),
      phonics: testPhonics('general-american'),
      reader: undefined,
      names: [],
    }
    const complete = findCompleter({
      ...sources,
      sequence: testSequence('series'),
      step: 'green-14',
      unfit: ADDED,
      fit: CLEARED,
    })
    const letters = [...'abcdefghijklmnopqrstuvwxyz']
    return letters.flatMap((one) => ['', ...letters].flatMap((other) => complete(one + other).map(({ word }) => word)))
  },
  'the bank of the desk': async () => {
    const desk = await openDesk(filesInMemory({ 'battledore.yaml': SETTINGS, 'a-day.md': STORY }))
    const story = { path: 'a-day.md', text: STORY, version: 1 }
    const found: string[] = []
    for (const search of ['', 'g', 'wi', 'sh', 'k', 'd']) {
      const { words } = await desk.ask({ kind: 'words', story, wish: { search, count: 4000 } })
      found.push(...words.map(({ word }) => word))
    }
    return found
  },
}

interface Checked {
  readonly messages: readonly { readonly suggestions: readonly string[] }[]
}

/** Heads and notes of printed sheets, which are no words proposed. */
const SAID = new Set('you look words little house day night'.split(' '))

/** All strings below a value that are single words. */
const toWords = (value: unknown): string[] =>
  typeof value === 'string'
    ? /^[a-z']{2,}$/i.test(value)
      ? [value]
      : []
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(toWords)
      : []

describe('no unfit word comes out of', () => {
  it.each(Object.keys(DOORS))('%s', async (name) => {
    const words = (await DOORS[name]?.()) ?? []
    const found = words.filter((word) => word !== '')
    expect(found.length, name).toBeGreaterThan(name === 'fix' || name === 'offers' ? 2 : 10)
    expect(findUnfit(found)).toEqual([])
  })
})

describe('what a school clears comes out of', () => {
  it.each(['lists', 'the sheet and its names', 'completions', 'the bank of the desk'])('%s', async (name) => {
    const words = (await DOORS[name]?.()) ?? []
    for (const word of CLEARED) expect(words, `${name}: ${word}`).toContain(word)
  })
})

it('the compiled answer is that of the list, for every word that can be listed', () => {
  const { facts } = testWords()
  const fitness = testWords().fitness()
  const table = testTable()
  const other = Array.from({ length: table.size }, (_, row) => row).filter(
    (row) => facts.factsAt(table.placeAt(row)).fit !== fitness.isFit(table.wordAt(row)),
  )
  expect(other.map((row) => table.wordAt(row))).toEqual([])
})
