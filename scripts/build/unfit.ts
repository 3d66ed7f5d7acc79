// Compiles the words that the program never proposes: npm `cuss` and the project's own list, to a small table of
// hashes.

import { cuss } from 'cuss'
import { hashText } from '../../src/hash.ts'
import { createFitness, FITNESS_KINDS, type FitnessKind, isFine } from '../../src/words/fitness.ts'
import { readRows } from './rows.ts'
import type { WordNet } from './wordnet.ts'

export interface UnfitRow {
  readonly word: string
  readonly kind: FitnessKind
  readonly reason: string
}

/** Every row of both lists, the project's own first where a word is on both. Sorted by word. */
export function readUnfit(): readonly UnfitRow[] {
  const rows = new Map<string, UnfitRow>()
  for (const [word, rating] of Object.entries(cuss)) {
    if (rating > 0 && !word.includes(' '))
      rows.set(word, { word, kind: 'profanity', reason: `rated ${rating} by npm cuss` })
  }
  for (const row of readOwnRows()) rows.set(row.word, row)
  return [...rows.values()].sort((a, b) => (a.word < b.word ? -1 : 1))
}

/** Letters that a word and one derived from it begin with, so that `life` does not follow `die`. */
const SAME_START = 3

/**
 * The rows, and one more for each of the words that WordNet derives from an unfit one: `weaponry`, `kidnapping`. A row of
 * a fit kind keeps a word out of it: `gravity` is not of the grave.
 * @param words among which to look, lower case
 */
export function addDerived(
  rows: readonly UnfitRow[],
  words: readonly string[],
  wordnet: Pick<WordNet, 'derives' | 'isLemma'>,
): readonly UnfitRow[] {
  const fitness = createFitness(buildUnfit(rows))
  const reviewed = new Set(rows.map(({ word }) => word))
  const byStart = new Map<string, UnfitRow[]>()
  for (const row of rows) {
    const start = row.word.slice(0, SAME_START)
    if (!isFine(row.kind)) byStart.set(start, [...(byStart.get(start) ?? []), row])
  }
  const derived = words.flatMap((word) => {
    const bases = byStart.get(word.slice(0, SAME_START)) ?? []
    if (bases.length === 0 || reviewed.has(word) || !wordnet.isLemma(word) || !fitness.isFit(word)) return []
    const base = bases.find(
      (row) => row.word.length < word.length && row.word.length >= SAME_START && wordnet.derives(word, row.word),
    )
    return base ? [{ word, kind: base.kind, reason: `derived from ${base.word}` }] : []
  })
  return [...rows, ...derived].sort((a, b) => (a.word < b.word ? -1 : 1))
}

export interface UnfitReason {
  readonly kind: FitnessKind
  readonly reason: string
  readonly example: string
}

/** The rows of src/words/data/unfit-reasons.tsv by their keys, in the order of the file. */
export function readReasons(): ReadonlyMap<string, UnfitReason> {
  return new Map(
    readRows('unfit-reasons.tsv')
      .map((row) => row.split('\t'))
      .map(([key = '', name = '', reason = '', example = '']) => {
        const kind = FITNESS_KINDS.find((known) => known === name)
        if (kind === undefined || reason === '') throw new Error(`unfit-reasons.tsv: cannot read the row of "${key}"`)
        return [key, { kind, reason, example }]
      }),
  )
}

/** The rows of src/words/data/unfit.tsv, in the order of the file; a note stands for the reason where there is one. */
export function readOwnRows(): readonly (UnfitRow & { readonly key: string })[] {
  const reasons = readReasons()
  return readRows('unfit.tsv')
    .map((row) => row.split('\t'))
    .map(([word = '', key = '', note = '']) => {
      const found = reasons.get(key)
      if (found === undefined || word === '')
        throw new Error(`unfit.tsv: "${word}" has the reason "${key}", which unfit-reasons.tsv lacks`)
      return { word, key, kind: found.kind, reason: note === '' ? found.reason : note }
    })
}

/** Five bytes a word: its hash, least byte first, and its kind. Sorted by hash. Nothing in it can be read by eye. */
export function buildUnfit(rows: readonly UnfitRow[]): Uint8Array {
  const hashed = rows.map(({ word, kind }) => ({ hash: hashText(word), kind })).sort((a, b) => a.hash - b.hash)
  const bytes = new Uint8Array(hashed.length * 5)
  const view = new DataView(bytes.buffer)
  hashed.forEach(({ hash, kind }, i) => {
    view.setUint32(i * 5, hash, true)
    view.setUint8(i * 5 + 4, FITNESS_KINDS.indexOf(kind))
  })
  return bytes
}
