// Builds the thesaurus: WordNet's trees of broader and narrower meanings, cut down to the words in use and laid out so
// that a branch is one run of rows.

import { toBytes } from '../../src/words/bytes.ts'
import type { WordFacts } from '../../src/words/facts.ts'
import { PLACE, PRIMARY_BIT, THESAURUS_PARTS, type ThesaurusPart } from '../../src/words/thesaurus.ts'
import { openUsualSenses, type UsualSenses } from './usual-senses.ts'
import type { Use } from './word-class.ts'
import type { Pointer, Sense, Synset, WordNet, WordNetPos } from './wordnet.ts'

/** A word of the lexicon with what the build found of it. */
export interface BuiltWord {
  readonly word: string
  readonly facts: WordFacts
  readonly uses: readonly Use[]
}

interface Node {
  readonly children: Node[]
  /** Number of the word in the thesaurus's own list, with PRIMARY_BIT where this is its most used meaning. */
  readonly words: number[]
}

const POS_OF: Readonly<Record<ThesaurusPart, WordNetPos>> = {
  noun: 'noun',
  verb: 'verb',
  adjective: 'adj',
  adverb: 'adv',
}

/** @param words in the lexicon's order. */
export function buildThesaurus(words: readonly BuiltWord[], wordnet: WordNet): Uint8Array {
  const usualSenses = openUsualSenses(wordnet)
  const places = choosePlaces(words)
  const rows: number[] = []
  const senses: number[] = []
  const sizes = THESAURUS_PARTS.map((part) => {
    const before = rows.length
    for (const root of growTrees(part, places, words, wordnet, usualSenses)) layOut(root, 0, rows, senses)
    return rows.length - before
  })
  const head = toBytes([places.length, ...sizes, senses.length])
  const many = rows.filter((row) => row >> 5 >= MANY).map((row) => (row >> 5) - MANY)
  if (many.some((count) => count > 255)) throw new Error('a meaning has too many words for a byte')
  return Buffer.concat([
    head,
    toBuffer(Uint32Array.from(places)),
    Uint8Array.from(rows, (row) => (Math.min(row >> 5, MANY) << 5) | (row & 31)),
    toBuffer(Uint16Array.from(senses)),
    toBuffer(Uint32Array.from(toStarts(rows))),
    toBytes([many.length]),
    Uint8Array.from(many),
  ])
}

const MANY = 7

const toBuffer = (numbers: Uint16Array | Uint32Array): Uint8Array => new Uint8Array(numbers.buffer)

/** For every 64th row: where its senses begin, and how many rows before it have many. */
function toStarts(rows: readonly number[]): readonly number[] {
  const starts: number[] = []
  let [at, many] = [0, 0]
  for (let row = 0; row <= rows.length; row++) {
    if (row % PLACE === 0) starts.push(at, many)
    const count = (rows[row] ?? 0) >> 5
    at += count
    if (count >= MANY) many++
  }
  return starts
}

// Base forms in use, the most used first where there are too many for fifteen bits.
function choosePlaces(words: readonly BuiltWord[]): number[] {
  const isInUse = ({ facts, uses }: BuiltWord): boolean =>
    (facts.rarity < 31 || facts.known > 0) && uses.some((use) => use.inflection === 'none' && use.part !== 'little')
  const places = words.flatMap((word, i) => (isInUse(word) ? [i] : []))
  const rarity = (place: number): number => words[place]?.facts.rarity ?? 31
  return places
    .sort((a, b) => rarity(a) - rarity(b))
    .slice(0, PRIMARY_BIT)
    .sort((a, b) => a - b)
}

function growTrees(
  part: ThesaurusPart,
  places: readonly number[],
  words: readonly BuiltWord[],
  wordnet: WordNet,
  usualSenses: UsualSenses,
): Node[] {
  const nodes = new Map<string, Node>()
  const roots: Node[] = []
  const grow = (key: string, parents: readonly string[]): Node => {
    const known = nodes.get(key)
    if (known !== undefined) return known
    const node: Node = { children: [], words: [] }
    nodes.set(key, node)
    const [parent, ...further] = parents
    if (parent === undefined) roots.push(node)
    else grow(parent, further).children.push(node)
    return node
  }
  places.forEach((place, id) => {
    const built = words[place]
    if (built === undefined || !built.uses.some((use) => use.part === part && use.inflection === 'none')) return
    usualSenses(built.word, POS_OF[part]).forEach((sense, i) => {
      const [own = '', ...parents] = findPath(sense, wordnet)
      grow(own, parents).words.push(i === 0 ? id | PRIMARY_BIT : id)
    })
  })
  return roots.flatMap(prune)
}

// From a meaning up to the root. Nouns and verbs climb to what is broader; an adjective to the head of its cluster;
// an adverb to the cluster of the adjective that it comes from.
function findPath(sense: Sense, wordnet: WordNet): string[] {
  const path: string[] = []
  let synset: Synset | undefined = wordnet.synset(sense.pos, sense.offset)
  while (synset !== undefined && path.length < 30) {
    path.push(`${synset.pos}${synset.offset}`)
    const symbol: string = synset.pos === 'adv' ? '\\' : synset.isSatellite ? '&' : '@'
    const up: Pointer | undefined = synset.pointers.find((pointer) => pointer.symbol === symbol)
    synset = up === undefined ? undefined : wordnet.synset(up.pos, up.offset)
  }
  if (sense.pos === 'verb') path.push(sense.lexFile)
  return path
}

// A node without words that has one child says nothing: the child takes its place.
function prune(node: Node): Node[] {
  const children = node.children.flatMap(prune)
  if (node.words.length === 0 && children.length < 2) return children
  return [{ words: node.words, children }]
}

// One number a row: depth in the low five bits, above it how many words mean this very thing.
function layOut(node: Node, depth: number, rows: number[], senses: number[]): void {
  rows.push((node.words.length << 5) | Math.min(depth, 31))
  senses.push(...node.words)
  for (const child of node.children) layOut(child, depth + 1, rows, senses)
}
