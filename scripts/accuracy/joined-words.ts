// Words joined and misspelt, made by seed or by rule: which are known as words, and which are told as slips?

import { readFileSync } from 'node:fs'
import { createRandom } from '../../src/finder/order.ts'
import type { Spelled } from '../../src/phonics/cutting.ts'
import { isPart } from '../build/compound-parts.ts'
import { frequencyRank } from '../build/frequency.ts'
import type { WordNet } from '../build/wordnet.ts'

const SEED = 20_261_131
const LEAST = 3

/** A hundred words of two that nobody put together: two words of the dictionary by seed, as they come. */
export function joinRandomWords(words: readonly string[], isWord: (word: string) => boolean): readonly string[] {
  const random = createRandom(SEED)
  const parts = words.filter((word) => /^[a-z]{3,7}$/.test(word))
  const pick = (): string => parts[Math.floor(random() * parts.length)] as string
  const joined = new Set<string>()
  while (joined.size < 100) {
    const word = pick() + pick()
    if (!isWord(word)) joined.add(word)
  }
  return [...joined]
}

/** The rank in use of an everyday noun. */
const EVERYDAY = 3000

/** Two hundred pairs of everyday nouns that nobody put together, by seed; a few are words that somebody might make. */
export function joinEverydayNouns(wordnet: WordNet, isWord: (word: string) => boolean): readonly string[] {
  const random = createRandom(SEED)
  const nouns = [...frequencyRank]
    .filter(([word, rank]) => rank < EVERYDAY && /^[a-z]{3,7}$/.test(word) && isPart(word, wordnet))
    .map(([word]) => word)
    .filter((word) => wordnet.posOf(word).noun.tags > wordnet.posOf(word).verb.tags)
  const pick = (): string => nouns[Math.floor(random() * nouns.length)] as string
  const joined = new Set<string>()
  while (joined.size < 200) {
    const word = pick() + pick()
    if (!isWord(word)) joined.add(word)
  }
  return [...joined]
}

/** A hundred nouns of WordNet, by seed, that are two of its nouns side by side, both of them in use. */
export function drawCompounds(nouns: readonly string[], wordnet: WordNet): readonly string[] {
  const random = createRandom(SEED)
  const isPart = (part: string): boolean =>
    part.length >= LEAST &&
    wordnet.isNoun(part) &&
    !wordnet.isName(part) &&
    (frequencyRank.get(part) ?? Infinity) < 10_000
  const isCompound = (word: string): boolean =>
    /^[a-z]{6,14}$/.test(word) &&
    [...word].some((_, at) => at >= LEAST && isPart(word.slice(0, at)) && isPart(word.slice(at)))
  const found = nouns.filter(isCompound).sort()
  return found
    .map((word) => ({ word, key: random() }))
    .sort((x, y) => x.key - y.key)
    .slice(0, 100)
    .map(({ word }) => word)
}

/** A word that parts into two words in use: put together of them, or only looking so. */
export interface DrawnWord {
  readonly word: string
  readonly isCompound: boolean
}

export const readDrawnWords = (): readonly DrawnWord[] =>
  readFileSync(new URL('../../tests/phonics/data/compounds.tsv', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .slice(1)
    .map((line) => {
      const [word = '', kind] = line.split('\t')
      return { word, isCompound: kind === 'compound' }
    })

export interface Misspelling {
  readonly wrong: string
  readonly right: string
}

/** How an ending goes wrong: the rule by which the slip is made of the right form, so that nothing has to be judged. */
const SLIPS: readonly (readonly [
  ending: string,
  toWrong: (stem: string) => string,
  toRight: (stem: string) => string,
  stem: RegExp,
])[] = [
  ['ing', (stem) => `${stem}ing`, (stem) => `${stem.slice(0, -1)}ing`, /[aeiou][bcdfgklmnprstvz]e$/],
  ['ing', (stem) => `${stem}ing`, (stem) => `${stem}${stem.at(-1)}ing`, /^[^aeiou]+[aeiou][bdgmnpt]$/],
  ['ed', (stem) => `${stem}ed`, (stem) => `${stem}${stem.at(-1)}ed`, /^[^aeiou]+[aeiou][bdgmnpt]$/],
  ['ed', (stem) => `${stem}ed`, (stem) => `${stem.slice(0, -1)}ied`, /[^aeiou]y$/],
  ['s', (stem) => `${stem}s`, (stem) => `${stem.slice(0, -1)}ies`, /[^aeiou]y$/],
  ['es', (stem) => `${stem}s`, (stem) => `${stem}es`, /(?:ch|sh|x|ss)$/],
]

/** Sixty slips, ten of each kind: of verbs and nouns in use, by seed. */
export function makeMisspellings(words: readonly string[], isWord: (word: string) => boolean): readonly Misspelling[] {
  const random = createRandom(SEED)
  const inUse = words.filter((word) => /^[a-z]{3,7}$/.test(word) && (frequencyRank.get(word) ?? Infinity) < 6000)
  return SLIPS.flatMap(([, toWrong, toRight, stem]) => {
    const found = inUse
      .filter((word) => stem.test(word) && isWord(toRight(word)) && !isWord(toWrong(word)))
      .map((word) => ({ wrong: toWrong(word), right: toRight(word), key: random() }))
    return found
      .sort((x, y) => x.key - y.key)
      .slice(0, 10)
      .map(({ wrong, right }) => ({ wrong, right }))
  })
}

export interface JoinedFigures {
  readonly known: readonly string[]
  readonly unknown: readonly string[]
}

export function measureKnown(words: readonly string[], spell: (word: string) => Spelled): JoinedFigures {
  const isKnown = (word: string) => spell(word).source === 'dictionary'
  return { known: words.filter(isKnown), unknown: words.filter((word) => !isKnown(word)) }
}

/** The slips that are told with another form or with none. */
export function findMissed(slips: readonly Misspelling[], spell: (word: string) => Spelled): readonly string[] {
  return slips
    .filter(({ wrong, right }) => spell(wrong).meant !== right)
    .map(({ wrong }) => `${wrong} ${spell(wrong).meant ?? ''}`)
}
