// Where parts of a word meet, so that a syllable begins there whatever its letters: an|other, steam|er, com|fort|a|ble. Only
// words that the letters alone would cut otherwise are kept.

import { isVowel } from '../../src/phonics/arpabet.ts'
import type { RawUnit } from '../../src/phonics/raw.ts'
import type { Spelling } from '../../src/phonics/spelling.ts'
import { cutSyllables } from '../../src/phonics/syllables.ts'
import { findTwoWords } from '../../src/phonics/two-words.ts'
import { isPart, LEAST_LETTERS } from './compound-parts.ts'
import { frequencyRank } from './frequency.ts'
import { ENDINGS, PREFIXES, readSeams, SUFFIXES, type Suffix } from './seam-tables.ts'
import type { WordNet } from './wordnet.ts'

/** Rarer words are names and slips. */
const MOST_USED = 40_000
const LEAST_BASE = 3

interface Tools {
  readonly given: ReadonlyMap<string, readonly number[]>
  readonly known: ReadonlySet<string>
  readonly spelling: Spelling
  readonly wordnet: WordNet
  /** Where the syllables of a word begin, as far as they have been asked for. */
  readonly cuts: Map<string, readonly number[]>
}

/** The letter places of each word at which its letters alone would not begin a syllable. */
export function findSeams(
  words: readonly string[],
  table: string,
  spelling: Spelling,
  wordnet: WordNet,
): ReadonlyMap<string, readonly number[]> {
  const tools: Tools = { given: readSeams(table), known: new Set(words), spelling, wordnet, cuts: new Map() }
  const seams = new Map<string, readonly number[]>()
  for (const word of words) {
    const plain = new Set(cutSyllables(word, unitsOf(word, tools)).starts)
    const own = cut(word, tools).filter((start) => !plain.has(start))
    if (own.length > 0 && (tools.given.has(word) || isCutAlike(word, tools))) seams.set(word, own)
  }
  return seams
}

/** Ways to say a word that part it otherwise, as `refuse`, have no seams in common. */
function isCutAlike(word: string, { spelling }: Tools): boolean {
  const { cuttings } = spelling.spell(word)
  return new Set(cuttings.map(({ raw }) => cutSyllables(word, raw.units).starts.join())).size < 2
}

function cut(word: string, tools: Tools): readonly number[] {
  const known = tools.cuts.get(word)
  if (known) return known
  const { starts } = cutSyllables(word, unitsOf(word, tools), findParts(word, tools))
  tools.cuts.set(word, starts)
  return starts
}

function findParts(word: string, tools: Tools): readonly number[] {
  const given = tools.given.get(word) ?? findTwo(word, tools)
  if (given !== undefined || !isUsed(word, tools)) return given ?? []
  return findEnded(word, tools) ?? findPrefixed(word, tools) ?? findCompound(word, tools) ?? []
}

/** an-y-bod-y; but noth-ing is not said as no and thing. */
function findTwo(word: string, tools: Tools): readonly number[] | undefined {
  const parts = findTwoWords(word) ?? []
  const [first, last] = parts
  // new-com-er
  if (parts.includes('-er')) return undefined
  if (first === undefined || last === undefined || last === '-s') return undefined
  return firstVowelOf(word, tools) === firstVowelOf(first, tools) ? join(first, last, tools) : undefined
}

/** Of top-soil and tops-oil, the one whose rarer part is more used. */
function findCompound(word: string, tools: Tools): readonly number[] | undefined {
  const { wordnet, known } = tools
  // The first part of a compound is stressed: beg and in make no begin.
  if (!unitsOf(word, tools).find(({ phones }) => phones.some(isVowel))?.stress) return undefined
  const places = Array.from({ length: word.length }, (_, at) => at)
  const pairs = places.slice(LEAST_LETTERS, 1 - LEAST_LETTERS).flatMap((at) => {
    const pair = [word.slice(0, at), word.slice(at)] as const
    const areParts = pair.every((part) => isPart(part, wordnet) && known.has(part))
    return areParts && soundsOf(word, tools) === pair.map((part) => soundsOf(part, tools)).join(' ') ? [pair] : []
  })
  const toRarer = (pair: readonly string[]): number =>
    Math.max(...pair.map((part) => frequencyRank.get(part) ?? Infinity))
  const [best] = pairs.sort((one, other) => toRarer(one) - toRarer(other))
  return best && join(best[0], best[1], tools)
}

/** steam-er, and weak-ened as weak-en. */
function findEnded(word: string, tools: Tools): readonly number[] | undefined {
  // gen-tly, as gen-tle, and not gent-ly
  const ofLe = /[^aeioul]ly$/.test(word) ? `${word.slice(0, -1)}e` : ''
  if (isUsed(ofLe, tools) && tools.wordnet.isLemma(ofLe)) return cut(ofLe, tools)
  // ap-pe-tiz-ing, last-ing: they tell how something is, and nobody appetizes
  if (/[^aeiouyl]ing$/.test(word) && !isDoubled(word) && tools.wordnet.isAdjective(word)) return [word.length - ING]
  const stems = ENDINGS.filter((ending) => word.endsWith(ending)).map((ending) => word.slice(0, -ending.length))
  for (const stem of [word, ...stems]) {
    const base = SUFFIXES.flatMap((suffix) => findBase(stem, suffix, tools) ?? [])[0]
    if (base !== undefined) return [...cut(base, tools), base.length]
  }
  return undefined
}

const ING = 3

/** run-ning, and cun-ning too */
const isDoubled = (word: string): boolean => word.at(-1 - ING) === word.at(-2 - ING)

function findBase(word: string, { letters, isLinked, after }: Suffix, tools: Tools): string | undefined {
  const base = word.slice(0, -letters.length)
  const isRight = word.endsWith(letters) && base.length >= LEAST_BASE && after?.test(base) !== false
  if (!isRight || !isUsed(word, tools) || !isUsed(base, tools) || !tools.wordnet.isLemma(base)) return undefined
  if (isLinked && !tools.wordnet.derives(word, base)) return undefined
  return soundsOf(word, tools).startsWith(`${soundsOf(base, tools)} `) ? base : undefined
}

function findPrefixed(word: string, tools: Tools): readonly number[] | undefined {
  const prefix = PREFIXES.find((one) => word.startsWith(one) && isUsed(word.slice(one.length), tools))
  const base = prefix === undefined ? '' : word.slice(prefix.length)
  const isRight = base.length >= LEAST_BASE && soundsOf(word, tools).endsWith(` ${soundsOf(base, tools)}`)
  return prefix !== undefined && isRight ? join(prefix, base, tools) : undefined
}

function join(first: string, last: string, tools: Tools): readonly number[] {
  return [...cut(first, tools), first.length, ...cut(last, tools).map((start) => start + first.length)]
}

const isUsed = (word: string, { known, wordnet }: Tools): boolean =>
  known.has(word) &&
  !wordnet.isName(word) &&
  (wordnet.isLemma(word) || (frequencyRank.get(word) ?? Infinity) < MOST_USED)

const unitsOf = (word: string, { spelling }: Tools): readonly RawUnit[] =>
  spelling.spell(word).cuttings[0]?.raw.units ?? []

const firstVowelOf = (word: string, tools: Tools): string | undefined =>
  unitsOf(word, tools)
    .flatMap(({ phones }) => phones)
    .find(isVowel)

/** With vowels alike that only an accent tells apart, and the two that a weak syllable has. */
const soundsOf = (word: string, tools: Tools): string =>
  unitsOf(word, tools)
    .flatMap(({ phones }) => phones)
    .map((phone) => (phone === 'AH' ? 'IH' : phone === 'AO' ? 'AA' : phone))
    .join(' ')
