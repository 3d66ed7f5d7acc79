// Measures what is offered for boxes and picture cards: how steady the judgement is, what of Dolch's picture nouns it reaches, and how
// much of what boxes hold is called by its name first.

import { readFileSync } from 'node:fs'
import { createPool, findSpelling, makeBox, type ShowAs } from '../../src/finder/index.ts'
import { DATA_FOLDER } from '../../src/packaged/data.ts'
import { readWordFiles } from '../../src/packaged/word-files.ts'
import { openWordFiles } from '../../src/resources/word-files.ts'
import { readShowing, type ShowingRow } from '../build/showing.ts'
import { type Engine, openWords } from './engine.ts'
import { toPercent } from './percent.ts'
import { readRows } from './read-rows.ts'
import type { Row } from './rows.ts'

const DATA = new URL('../../tests/words/data/', import.meta.url)
const read = (file: string): string[] => readRows(readFileSync(new URL(file, DATA), 'utf8'))

export interface Again {
  readonly word: string
  readonly object: string
  readonly picture: string
  readonly drawn: string
}

export function readAgain(): readonly Again[] {
  const [, ...rows] = read('shown-again.tsv')
  return rows.map((row) => {
    const [word = '', object = '', picture = '', drawn = ''] = row.split('\t')
    return { word, object, picture, drawn }
  })
}

export const measureShowing = (engine: Engine): readonly Row[] => [
  ...(['object', 'picture'] as const).flatMap((as) => measureAgain(as, readShowing(), readAgain())),
  measureDolch(readShowing()),
  measureBoxes(engine),
]

/** Of the words that are offered first, those that a second judgement calls so too. */
function measureAgain(as: ShowAs, rows: readonly ShowingRow[], again: readonly Again[]): readonly Row[] {
  const first = new Map(rows.map((row) => [row.word, row[as]]))
  const offered = again.filter(({ word }) => first.get(word) === 'fine')
  const fine = offered.filter((row) => row[as] === 'fine')
  const same = again.filter((row) => row[as] === first.get(row.word))
  const other = offered.filter((row) => row[as] !== 'fine').map(({ word }) => word)
  return [
    {
      what: `words offered first as ${as}s that a second, blind judgement calls fine`,
      published: `${offered.length}`,
      ours: `${fine.length} (${toPercent(fine.length / offered.length)})`,
      source: "the project's own judgement",
      note: `the same judge; both agree in ${toPercent(same.length / again.length)} of ${again.length}; not fine: ${other.join(' ')}`,
    },
  ]
}

/** Nouns that Dolch counted as picture nouns and the table has: what it says of them. */
function measureDolch(rows: readonly ShowingRow[]): Row {
  const classes = new Map(rows.map(({ word, picture }) => [word, picture]))
  const nouns = read('dolch-nouns.txt').filter((word) => classes.has(word))
  const count = (name: string): number => nouns.filter((word) => classes.get(word) === name).length
  return {
    what: 'picture nouns that the table calls fine, or fine with a word said',
    published: `${nouns.length} of Dolch's 95 are judged`,
    ours: `${count('fine')} and ${count('hint')}`,
    source: 'Dolch 1948',
    note: `likelier another word: ${count('likelier')}, no picture: ${count('no')}`,
  }
}

/** The box for each short vowel as it comes where nobody says how many, at the steps from the last short vowel on. */
function measureBoxes({ lexicon, phonics }: Engine): Row {
  const { sequence } = openWords(lexicon)
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const own = phonics[sequence.accent]
  const steps = sequence.steps.slice(sequence.steps.findIndex(({ id }) => id === 'pink-5'))
  const words = steps.flatMap(({ id }) => {
    const pool = createPool(
      { table, facts: data.facts, lexicon, phonics: own },
      { sequence, step: id, builtIn: 'series' },
    )
    return ['a', 'e', 'i', 'o', 'u'].flatMap((letter) => {
      const found = findSpelling(letter, sequence, own)
      if ('problem' in found) throw new Error(found.problem)
      const box = makeBox('box', { vowel: [found.spelling] }, pool, sequence)
      return 'problem' in box ? [] : box.words
    })
  })
  const fine = words.filter(({ shown }) => shown?.object === 'fine').length
  return {
    what: 'things in boxes for a short vowel that are called by this name first',
    published: `${words.length}`,
    ours: `${toPercent(fine / words.length)}`,
    source: "the project's own judgement",
    note: 'of the others the box says the likelier word, or what is to be said',
  }
}
