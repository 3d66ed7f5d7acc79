// The table of words that a teacher can put for another in most sentences, each with where it can stand.

import { CONDITIONS } from './conditions.ts'
import type { PartOfSpeech } from './facts.ts'
import { keep } from './keep.ts'
import type { FactsOf, Surroundings } from './surroundings.ts'
import { type PlaceTest, toPlaceTest } from './where.ts'

export interface StandIn {
  /** One word or several: `go up`. Of several doing words, the first is inflected; of others, the last. */
  readonly text: string
  readonly words: readonly string[]
  /** Where it can stand, as the table writes it; everywhere without it. */
  readonly where: string | undefined
  /** Said of just this form of the word. */
  readonly ofForm?: boolean
}

/** @throws RangeError for a sign that stands for no condition */
const toTest = keep((where): PlaceTest => toPlaceTest(where, CONDITIONS))

/** Whether it can stand at a place, by the table. */
export const canStandAt = ({ where }: StandIn, place: Surroundings, factsOf: FactsOf): boolean =>
  where === undefined || toTest(where)(place, factsOf)

export interface StandIns {
  /** Nearest first. `form`: for the word as it is, not inflected. */
  find(word: string, kind: PartOfSpeech | 'form'): readonly StandIn[]
  /** Where a sentence does without the word, as signs of src/words/leaving-out.ts. */
  leaves(word: string, kind: PartOfSpeech | 'form'): readonly string[]
}

/** Stands in the table for nothing at all. */
const NOTHING = '-/'

const KINDS: Readonly<Record<PartOfSpeech | 'form', string>> = {
  noun: 'n',
  verb: 'v',
  adjective: 'a',
  adverb: 'd',
  little: '-',
  form: '=',
}

/** @param text rows of data/stand-ins.tsv: word, kind, stand-ins */
export function openStandIns(text: string): StandIns {
  let rows: ReadonlyMap<string, string> | undefined
  const read = keep((key) => {
    rows ??= toRows(text)
    const cells = rows.get(key)?.split(' ')
    return cells === undefined ? EMPTY : toRow(cells)
  })
  const toKey = (word: string, kind: PartOfSpeech | 'form'): string => `${word}\t${KINDS[kind]}`
  return {
    find: (word, kind) => read(toKey(word, kind)).standIns,
    leaves: (word, kind) => read(toKey(word, kind)).leaves,
  }
}

interface TableRow {
  readonly standIns: readonly StandIn[]
  readonly leaves: readonly string[]
}

const EMPTY: TableRow = { standIns: [], leaves: [] }

const toRow = (cells: readonly string[]): TableRow => ({
  standIns: cells.filter((cell) => !cell.startsWith(NOTHING)).map(toStandIn),
  leaves: cells.filter((cell) => cell.startsWith(NOTHING)).map((cell) => cell.slice(NOTHING.length)),
})

function toRows(text: string): Map<string, string> {
  const rows = new Map<string, string>()
  for (const line of text.split('\n')) {
    const end = line.lastIndexOf('\t')
    if (end > 0 && !line.startsWith('#')) rows.set(line.slice(0, end), line.slice(end + 1))
  }
  return rows
}

/** @throws RangeError for a sign that stands for no condition */
function toStandIn(cell: string): StandIn {
  const [text = '', where] = cell.split('/')
  if (where !== undefined) toTest(where)
  const words = text.split('_')
  return { text: words.join(' '), words, where }
}
