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

/** Rows of one place. */
export const PLACE = 64

/**
 * Opens the compiled table. Rows stand in tree order with their depth, so that the branch under a row is the run of
 * deeper rows after it. How many senses each row has is counted only around the rows that are asked for: for every 64th
 * row the table says where its senses begin, and how many rows before it have many.
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
  readonly senses: Uint16Array
  /** Where the senses of a row begin; of the one after the last, where they end. */
  first(row: number): number
  /** The row that a sense belongs to: the last one that begins at or before it. */
  rowOf(sense: number): number
}

function toTree(bytes: Uint8Array): Tree {
  const reader = toByteReader(bytes)
  const size = reader.next()
  const parts = [0]
  for (const _ of THESAURUS_PARTS) parts.push((parts.at(-1) ?? 0) + reader.next())
  const count = reader.next()
  // Least byte first, as all machines have it that Node or a browser runs on.
  const takeWords = (length: number) => new Uint32Array(new Uint8Array(reader.take(4 * length)).buffer)
  const places = takeWords(size)
  const rows = reader.take(parts.at(-1) ?? 0)
  const senses = new Uint16Array(new Uint8Array(reader.take(2 * count)).buffer)
  const starts = takeWords(2 * Math.ceil((rows.length + 1) / PLACE))
  const many = reader.take(reader.next())
  return { places, parts, senses, rows, ...openRows(rows, starts, many) }
}

const MANY = 7

/** @param starts by place, where the senses of its first row begin, and how many rows before it have many */
function openRows(rows: Uint8Array, starts: Uint32Array, many: Uint8Array): Pick<Tree, 'first' | 'rowOf'> {
  const places = starts.length / 2
  const counted = new Uint32Array(places * PLACE)
  const isCounted = new Uint8Array(places)
  const count = (place: number): void => {
    isCounted[place] = 1
    let at = starts[place * 2] ?? 0
    let next = starts[place * 2 + 1] ?? 0
    for (let row = place * PLACE; row < (place + 1) * PLACE; row++) {
      counted[row] = at
      const few = (rows[row] ?? 0) >> 5
      at += few < MANY ? few : MANY + (many[next++] ?? 0)
    }
  }
  const first = (row: number): number => {
    const place = Math.floor(row / PLACE)
    if (isCounted[place] === 0) count(place)
    return counted[row] ?? 0
  }
  return {
    first,
    rowOf(sense) {
      const from = PLACE * findLastIndex(places, (place) => (starts[place * 2] ?? 0) <= sense)
      const length = Math.min(PLACE, rows.length + 1 - from)
      return from + findLastIndex(length, (row) => first(from + row) <= sense)
    },
  }
}

const toDepth = (tree: Tree, row: number): number => (tree.rows[row] ?? 0) & 31

/** The senses of the rows from..to. */
const countSenses = ({ first }: Tree, from: number, to: number): number => first(to) - first(from)

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
  const end = from < to ? tree.first(to) : 0
  for (let i = tree.first(from); i < end; i++) {
    const sense = tree.senses[i] ?? 0
    const id = sense & (PRIMARY_BIT - 1)
    const own = (sense & PRIMARY_BIT) === 0 ? cost + RARE_OFFER : cost
    if (own < (costs.get(id) ?? Number.POSITIVE_INFINITY)) costs.set(id, own)
  }
}

/** The rows at which a word stands, in tree order. Found by the engine's own search, which is fast from the first call on. */
function rowsOf(
  { senses, first, rowOf, parts }: Tree,
  id: number,
  part: number,
): { row: number; isPrimary: boolean }[] {
  const start = first(parts[part] ?? 0)
  const end = first(parts[part + 1] ?? 0)
  const found: { at: number; isPrimary: boolean }[] = []
  for (const isPrimary of [false, true]) {
    const sense = isPrimary ? id | PRIMARY_BIT : id
    for (let at = senses.indexOf(sense, start); at >= 0 && at < end; at = senses.indexOf(sense, at + 1))
      found.push({ at, isPrimary })
  }
  return found.sort((a, b) => a.at - b.at).map(({ at, isPrimary }) => ({ row: rowOf(at), isPrimary }))
}
