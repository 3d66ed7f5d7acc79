// What is known of each word of the lexicon beside its sounds: part of speech, picture, how well children know it, fit
// or not, how often used.

import { toByteReader } from './bytes.ts'
import { type Inflection, toBases } from './inflect.ts'
import { type Kinds, openKinds, type WordKind } from './kinds.ts'
import { openShowing, type Shown } from './showing.ts'

/** Naming word, doing word, describing word (adjective or adverb), little word. */
export type PartOfSpeech = 'noun' | 'verb' | 'adjective' | 'adverb' | 'little'

export interface WordFacts {
  /**
   * All parts of speech that the word is used as, the main one included; empty for a name or a word that WordNet lacks.
   */
  readonly partsOfSpeech: readonly PartOfSpeech[]
  readonly main: PartOfSpeech | undefined
  /** Of the main part of speech: `plural` for `boats`. */
  readonly inflection: Inflection
  /** Whether a picture can name it, or a thing too. Of the noun, whatever the main part of speech. */
  readonly nameable: 'no' | 'picture' | 'object'
  /** 3 known in grades 1 to 3, 2 in grade 4, 1 among the 6,000 most used, 0 otherwise. */
  readonly known: 0 | 1 | 2 | 3
  /** Whether the built-in list lets it be proposed. */
  readonly fit: boolean
  /**
   * How often used: 0 for the most used word, each step rarer by the factor 1.44 in rank, 31 for a word not in the
   * list.
   */
  readonly rarity: number
}

export interface WordFactTable {
  readonly size: number
  /** Facts of the word at a place of the lexicon. */
  factsAt(index: number): WordFacts
  /** The same as one number, for what is asked of every word: see `toUseOfBits`. */
  bitsAt(index: number): number
  /** What a small child says of the thing and its picture; undefined where nobody has judged it. */
  shown(word: string): Shown | undefined
  /** Of which kinds a word with these facts is, the main one first. */
  kindsOf(word: string, facts: WordFacts): readonly WordKind[]
}

/** What ordering by use needs, out of the number of a word's facts. */
export const toUseOfBits = (
  bits: number,
): {
  readonly known: number
  readonly rarity: number
  readonly isInflected: boolean
  readonly isNoun: boolean
  readonly isLittle: boolean
} => ({
  known: (bits >> 13) & 3,
  rarity: bits >> 16,
  isInflected: ((bits >> 8) & 7) !== 0,
  isNoun: ((bits >> 5) & 7) === 1,
  isLittle: ((bits >> 5) & 7) === PARTS.indexOf('little') + 1,
})

// Orders give the numbers in the compiled table: append, never reorder.
const PARTS = ['noun', 'verb', 'adjective', 'adverb', 'little'] as const satisfies readonly PartOfSpeech[]
const INFLECTIONS = [
  'none',
  'plural',
  'third',
  'past',
  'participle',
  'ing',
  'comparative',
  'superlative',
] as const satisfies readonly Inflection[]
const NAMEABLE = ['no', 'picture', 'object'] as const
const KNOWN = [0, 1, 2, 3] as const

/** 21 bits: 5 parts of speech, 3 main part, 3 inflection, 2 nameable, 2 known, 1 fit, 5 rarity. */
export function packFacts(facts: WordFacts): number {
  const parts = facts.partsOfSpeech.reduce((bits, part) => bits | (1 << PARTS.indexOf(part)), 0)
  const main = facts.main === undefined ? 0 : PARTS.indexOf(facts.main) + 1
  return (
    parts |
    (main << 5) |
    (INFLECTIONS.indexOf(facts.inflection) << 8) |
    (NAMEABLE.indexOf(facts.nameable) << 11) |
    (facts.known << 13) |
    ((facts.fit ? 1 : 0) << 15) |
    (facts.rarity << 16)
  )
}

export function unpackFacts(bits: number): WordFacts {
  return {
    partsOfSpeech: PARTS.filter((_, i) => (bits & (1 << i)) !== 0),
    main: PARTS[((bits >> 5) & 7) - 1],
    inflection: INFLECTIONS[(bits >> 8) & 7] ?? 'none',
    nameable: NAMEABLE[(bits >> 11) & 3] ?? 'no',
    known: KNOWN[(bits >> 13) & 3] ?? 0,
    fit: (bits & (1 << 15)) !== 0,
    rarity: bits >> 16,
  }
}

const toKind = (part: PartOfSpeech | undefined): WordKind =>
  part === 'noun' ? 'naming' : part === 'verb' ? 'doing' : part === 'little' ? 'little' : 'describing'

/** `mops` are things, and what somebody does. */
function toKindsOfForm(word: string, { inflection }: WordFacts, judged: Kinds): readonly WordKind[] | undefined {
  if (inflection !== 'plural' && inflection !== 'third') return undefined
  const own = toBases(word).flatMap(({ base }) => (base === word ? [] : (judged(base) ?? [])))
  const found = own.filter((kind) => kind === 'naming' || kind === 'doing')
  return found.length === 0 ? undefined : [...new Set(found)]
}

/**
 * Opens the compiled table. In order: how many different facts there are; each packed; two bytes a word, least first,
 * the number of its facts.
 * Costs next to nothing before a word is asked for; one object serves all words that share their facts.
 * @param showing what `packShowing` made
 * @param kinds what `packKinds` made
 */
export function openWordFacts(
  bytes: Uint8Array,
  showing: Uint8Array = new Uint8Array(),
  kinds: Uint8Array = new Uint8Array(),
): WordFactTable {
  const reader = toByteReader(bytes)
  const packed = Array.from({ length: reader.next() }, () => reader.next())
  const size = reader.next()
  const ids = reader.take(2 * size)
  const opened: WordFacts[] = []
  const judged: Kinds = openKinds(kinds)
  const idAt = (index: number): number => {
    const low = ids[2 * index]
    const high = ids[2 * index + 1]
    if (low === undefined || high === undefined) throw new RangeError(`no word has the place ${index}`)
    return low | (high << 8)
  }
  return {
    size,
    shown: openShowing(showing),
    kindsOf: (word, facts) => judged(word) ?? toKindsOfForm(word, facts, judged) ?? [toKind(facts.main)],
    bitsAt: (index) => packed[idAt(index)] ?? 0,
    factsAt(index) {
      const id = idAt(index)
      const facts = opened[id] ?? unpackFacts(packed[id] ?? 0)
      opened[id] = facts
      return facts
    },
  }
}
