// Measures whether lists hold what can be read: of the words of children's stories and word lists, the share that is listed at the very step
// at which the word becomes readable.

import { readFileSync } from 'node:fs'
import { daleChall } from 'dale-chall'
import { spache } from 'spache'
import { createPool, type Pool } from '../../src/finder/index.ts'
import { DATA_FOLDER } from '../../src/packaged/data.ts'
import { readWordFiles } from '../../src/packaged/word-files.ts'
import { openWordFiles } from '../../src/resources/word-files.ts'
import { toStepIndex } from '../../src/sequence/index.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { type Engine, openWords } from './engine.ts'
import { toPercent } from './percent.ts'
import { readRows } from './read-rows.ts'
import type { Row } from './rows.ts'

const readStoryWords = (): readonly string[] =>
  readRows(readFileSync(new URL('data/story-words.txt', import.meta.url), 'utf8'))

/** Days and names have no place on a list in small letters, and what has an apostrophe is a form. */
const isPlain = (word: string): boolean => /^[a-z]{2,}$/.test(word)

export function measureListed({ lexicon, phonics }: Engine): readonly Row[] {
  const { sequence } = openWords(lexicon)
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const own = phonics[sequence.accent]
  const last = sequence.steps.at(-1)?.id ?? ''
  const pool = createPool(
    { table, facts: data.facts, lexicon, phonics: own },
    { sequence, step: last, builtIn: 'series' },
  )
  const stepOf = (word: string): number | undefined => {
    const step = lexicon.indexOf(word) < 0 ? undefined : findReadableAt(own.read(word), sequence)
    return step === undefined ? undefined : toStepIndex(sequence, step)
  }
  const isFit = data.fitness().isFit
  const sources = [
    ['words of stories for children', readStoryWords(), 'African Storybook, CC BY; seen while tuning'],
    ['words that American children know in grade 3', spache, 'Spache 1974'],
    ['words that American children know in grade 4', daleChall, 'Dale and Chall 1995'],
  ] as const
  return sources.map(([what, words, source]) => {
    const readable = [...new Set(words)].filter((word) => isPlain(word) && stepOf(word) !== undefined)
    const fit = readable.filter(isFit)
    const lost = fit.filter((word) => !isListedAt(word, stepOf(word), pool))
    const unfit = readable.length - fit.length
    return {
      what: `${what}: share of the readable and fit that is listed at once`,
      published: 'goal 98 %',
      ours: `${toPercent(1 - lost.length / fit.length)} of ${fit.length}`,
      source,
      note: `${unfit} more are held unfit; not listed: ${lost.slice(0, 12).join(' ')}`,
    }
  })
}

/** Of the words that children of grade 3 know, and their forms, those that are never proposed: for a reason that is written down, or without need. */
export function measureRefused({ lexicon }: Engine): readonly Row[] {
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const { isFit } = data.fitness()
  const best = Array.from({ length: table.size }, (_, row) => row)
    .filter((row) => data.facts.factsAt(table.placeAt(row)).known === 3)
    .map((row) => table.wordAt(row))
  const refused = best.filter((word) => !isFit(word)).sort()
  const needed = readNeeded()
  const needless = refused.filter((word) => !needed.has(word))
  const row = (what: string, published: string, words: readonly string[]): Row => ({
    what: `best-known words and their forms that are held unfit, ${what}`,
    published,
    ours: `${words.length} of ${best.length}`,
    source: "the project's own judgement",
    ...(words.length > 0 && { note: words.join(' ') }),
  })
  return [
    row('without need', 'goal at most 10', needless),
    row(
      'for a reason',
      '-',
      refused.filter((word) => needed.has(word)),
    ),
  ]
}

/** Forms of scripts/accuracy/data/refusals.tsv that are refused for a reason. */
const readNeeded = (): ReadonlySet<string> =>
  new Set(
    readRows(readFileSync(new URL('data/refusals.tsv', import.meta.url), 'utf8'))
      .map((row) => row.split('\t'))
      .flatMap(([form = '', verdict]) => (verdict === 'needed' ? [form] : [])),
  )

function isListedAt(word: string, step: number | undefined, pool: Pool): boolean {
  const at = pool.find(word)
  return at >= 0 && pool.isFit(at) && pool.firstStep(at) === step
}
