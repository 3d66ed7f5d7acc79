// The table of words that a teacher can put for another in most sentences, each with where it can stand.

import { findLines } from '../sorted/lines.ts'
import { CONDITIONS } from './conditions/index.ts'
import type { PartOfSpeech } from './facts.ts'
import { keep } from './keep.ts'
import { type PlaceTest, toPlaceTest } from './where.ts'

export interface StandIn {
  /** One word or several: `go up`. Of several doing words, the first is inflected; of others, the last. */
  readonly text: string
  readonly words: readonly string[]
  /** Where it can stand, as the table writes it; everywhere without it. */
  readonly where: string | undefined
  /** The same, to be asked of a place: whether it can stand there, by the table. */
  readonly test: PlaceTest | undefined
  /** Said of just this form of the word. */
  readonly ofForm?: boolean
}

/** @throws RangeError for a sign that stands for no condition */
const toTest = keep((where): PlaceTest => toPlaceTest(where, CONDITIONS))

export interface StandIns {
  /** Nearest first. `form`: for the word as it is, not inflected. */
  find(word: string, kind: PartOfSpeech | 'form'): readonly StandIn[]
  /** Where a sentence does without the word, as signs of src/words/leaves. */
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

/**
 * Rows are found in place: a check that has little to propose asks for few of them.
 * @param bytes rows of data/stand-ins.tsv: word, kind, stand-ins; sorted by word
 */
export function openStandIns(bytes: Uint8Array): StandIns {
  let last: { readonly word: string; readonly rows: readonly Row[] } | undefined
  const read = (word: string, kind: PartOfSpeech | 'form'): TableRow => {
    // Most words are in no row, and are asked for as every kind in turn.
    if (last?.word !== word) last = { word, rows: findLines(bytes, word).map(toKindRow) }
    const sign = KINDS[kind]
    const row = last.rows.find((one) => one.kind === sign)
    if (row === undefined) return EMPTY
    row.read ??= toRow(row.cells.split(' '))
    return row.read
  }
  return {
    find: (word, kind) => read(word, kind).standIns,
    leaves: (word, kind) => read(word, kind).leaves,
  }
}

/** The row of a word as one kind, with what it says once it has been asked for. */
interface Row {
  readonly kind: string
  readonly cells: string
  read: TableRow | undefined
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

function toKindRow(line: string): Row {
  const end = line.indexOf('\t')
  return { kind: line.slice(0, end), cells: line.slice(end + 1), read: undefined }
}

/** @throws RangeError for a sign that stands for no condition */
function toStandIn(cell: string): StandIn {
  const [text = '', where] = cell.split('/')
  const words = text.split('_')
  return { text: words.join(' '), words, where, test: where === undefined ? undefined : toTest(where) }
}
