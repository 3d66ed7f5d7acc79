// Words near in meaning, by their distance in WordNet's trees: synonyms, then broader and narrower words, then sisters,
// then cousins.

import { findIndexOf, findLastIndex } from '../sorted.ts'
import { toByteReader } from './bytes.ts'
import type { PartOfSpeech } from './facts.ts'

export type ThesaurusPart = Exclude<PartOfSpeech, 'little'>

/** In the order of the sections of the compiled table. */
export const THESAURUS_PARTS = ['noun', 'verb', 'adjective', 'adverb'] as const satisfies readonly ThesaurusPart[]

/** Marks a word's most used meaning. */
export const PRIMARY_BIT = 1 << 15

interface NearWord {
  /** Place in the lexicon. */
  readonly index: number
  /** 0 for a synonym; grows with the number of words in the smallest branch that holds both. */
  readonly cost: number
}

export interface Thesaurus {
  /**
   * Base forms near to a base form, nearest first, without the word itself. Empty for a word that it lacks.
   * @param most the highest cost wanted: a low one spares the climb through the branches.
   */
  near(index: number, part: ThesaurusPart, most?: number): readonly NearWord[]
}

// A branch wider than this has too little in common: animals are some 400 meanings, things some 7,000.
const WIDEST_BRANCH = 500

/** What it costs that the word looked for is not meant in its most used meaning; and that the word offered is not. */
const RARE_MEANING = 2
const RARE_OFFER = 2.5

/** The least that any word outside a meaning's own row costs: the share of a branch of two, the smallest. */
const BROADER = 0.75
const CHEAPEST_BRANCH = BROADER * Math.log2(1 + 2)

/**
 * Opens the compiled table. Rows stand in tree order with their depth, so that the branch under a row is the run of
 * deeper rows after it.
 * Costs some milliseconds at the first call of `near`, nothing before.
 */
export function openThesaurus(bytes: Uint8Array): Thesaurus {
  let tree: Tree | undefined
  return {
    near(index, part, most = Number.POSITIVE_INFINITY) {
      tree ??= toTree(bytes)
      return findNear(tree, index, THESAURUS_PARTS.indexOf(part), most)
    },
  }
}

interface Tree {
  /** Lexicon places of the words, by their number here, ascending. */
  readonly places: Uint32Array
  /** First row of each part of speech, and the end. */
  readonly parts: readonly number[]
  /** The depth of each row in its lower five bits. */
  readonly rows: Uint8Array
  /** Where the senses of a row begin; one more at the end. */
  readonly first: Uint32Array
  readonly senses: Uint16Array
}

function toTree(bytes: Uint8Array): Tree {
  const reader = toByteReader(bytes)
  const places = new Uint32Array(reader.next())
  for (let i = 0, place = 0; i < places.length; i++) places[i] = place += reader.next()
  const parts = [0]
  for (const _ of THESAURUS_PARTS) parts.push((parts.at(-1) ?? 0) + reader.next())
  const count = reader.next()
  const rows = reader.take(parts.at(-1) ?? 0)
  // Least byte first, as all machines have it that Node or a browser runs on.
  const senses = new Uint16Array(new Uint8Array(reader.take(2 * count)).buffer)

  const first = new Uint32Array(rows.length + 1)
  for (let i = 0; i < rows.length; i++) {
    const few = (rows[i] ?? 0) >> 5
    first[i + 1] = (first[i] ?? 0) + (few < 7 ? few : 7 + reader.next())
  }
  return { places, parts, senses, first, rows }
}

const toDepth = (tree: Tree, row: number): number => (tree.rows[row] ?? 0) & 31

/** The senses of the rows from..to. */
const countSenses = ({ first }: Tree, from: number, to: number): number => (first[to] ?? 0) - (first[from] ?? 0)

/** Row of the broader meaning; -1 at a root, and where it lies so far before that its branch is too wide to be of use. */
function findParent(tree: Tree, row: number): number {
  const depth = toDepth(tree, row)
  if (depth === 0) return -1
  for (let before = row - 1; before >= 0; before--) {
    if (toDepth(tree, before) < depth) return before
    if (countSenses(tree, before, row) > WIDEST_BRANCH) return -1
  }
  return -1
}

/** Row after the last of the branch, or after as much of it as makes it too wide to be of use. */
function findEnd(tree: Tree, row: number): number {
  const depth = toDepth(tree, row)
  let end = row + 1
  while (end < tree.rows.length && toDepth(tree, end) > depth && countSenses(tree, row, end) <= WIDEST_BRANCH) end++
  return end
}

function findNear(tree: Tree, index: number, part: number, most: number): NearWord[] {
  const own = findIndexOf(tree.places, index)
  if (own < 0) return []
  const costs = new Map<number, number>()
  for (const row of rowsOf(tree, own, part)) {
    const start = row.isPrimary ? 0 : RARE_MEANING
    if (start > most) continue
    if (start + CHEAPEST_BRANCH > most) addRows(tree, row.row, row.row + 1, start, costs)
    else climb(tree, row.row, start, costs)
  }
  costs.delete(own)
  return [...costs]
    .filter(([, cost]) => cost <= most)
    .map(([id, cost]) => ({ index: tree.places[id] ?? 0, cost }))
    .sort((a, b) => a.cost - b.cost || a.index - b.index)
}

// From one meaning upwards: each wider branch costs more, by the logarithm of the meanings in it.
function climb(tree: Tree, from: number, start: number, costs: Map<number, number>): void {
  let seenStart = from
  let seenEnd = from
  for (let row = from; row >= 0; row = findParent(tree, row)) {
    const end = row === from ? row + 1 : findEnd(tree, row)
    const width = countSenses(tree, row, end)
    if (width > WIDEST_BRANCH) return
    const cost = start + (row === from ? 0 : Math.log2(1 + width))
    // What is broader itself stands at the row; it is nearer than the sisters below it.
    addRows(tree, row, row + 1, row === from ? start : start + BROADER * Math.log2(1 + width), costs)
    addRows(tree, row + 1, Math.min(seenStart, end), cost, costs)
    addRows(tree, seenEnd, end, cost, costs)
    if (row === from) addNarrower(tree, from, start, costs)
    seenStart = row
    seenEnd = row === from ? findEnd(tree, row) : end
  }
}

function addNarrower(tree: Tree, row: number, start: number, costs: Map<number, number>): void {
  const end = findEnd(tree, row)
  const width = countSenses(tree, row, end)
  if (width <= WIDEST_BRANCH) addRows(tree, row + 1, end, start + BROADER * Math.log2(1 + width), costs)
}

function addRows(tree: Tree, from: number, to: number, cost: number, costs: Map<number, number>): void {
  for (let i = tree.first[from] ?? 0; from < to && i < (tree.first[to] ?? 0); i++) {
    const sense = tree.senses[i] ?? 0
    const id = sense & (PRIMARY_BIT - 1)
    const own = (sense & PRIMARY_BIT) === 0 ? cost + RARE_OFFER : cost
    if (own < (costs.get(id) ?? Number.POSITIVE_INFINITY)) costs.set(id, own)
  }
}

/** The rows at which a word stands, in tree order. Found by the engine's own search, which is fast from the first call on. */
function rowsOf({ senses, first, parts }: Tree, id: number, part: number): { row: number; isPrimary: boolean }[] {
  const start = first[parts[part] ?? 0] ?? 0
  const end = first[parts[part + 1] ?? 0] ?? 0
  const found: { at: number; isPrimary: boolean }[] = []
  for (const isPrimary of [false, true]) {
    const sense = isPrimary ? id | PRIMARY_BIT : id
    for (let at = senses.indexOf(sense, start); at >= 0 && at < end; at = senses.indexOf(sense, at + 1))
      found.push({ at, isPrimary })
  }
  return found.sort((a, b) => a.at - b.at).map(({ at, isPrimary }) => ({ row: rowOf(first, at), isPrimary }))
}

/** The row that a sense belongs to: the last one that begins at or before it. */
const rowOf = (first: Uint32Array, sense: number): number =>
  findLastIndex(first.length, (row) => (first[row] as number) <= sense)
