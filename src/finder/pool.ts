// All words that can be listed for one reader: the compiled table, and what is known by heart beyond it.

import type { Phonics, WordPronunciations } from '../phonics/types.ts'
import {
  type Knowledge,
  knowledgeAt,
  type ReaderExtra,
  type Sequence,
  toSightKey,
  toStepIndex,
  withReader,
} from '../sequence/index.ts'
import { isReadable, judge } from '../verdict/index.ts'
import {
  type Fitness,
  isLittleWord,
  packFacts,
  type Shown,
  type WordFacts,
  type WordFactTable,
  type WordKind,
  type WordOrder,
} from '../words/index.ts'
import { findFirstStepOfAllForms, isReadableInAllForms, toWritten } from './forms.ts'
import { toListPronunciation } from './pronunciation.ts'
import type { ListPronunciation, ListTable, SoundTable, StepColumn } from './table.ts'

export interface FinderSources {
  readonly table: ListTable
  readonly facts: WordFactTable
  readonly lexicon: WordOrder
  /** What a project adds and clears; without it, the built-in list alone tells what is fit. */
  readonly fitness?: Fitness | undefined
  readonly phonics: Phonics
}

/** Who is to read the words. */
export interface ListReader {
  readonly sequence: Sequence
  /** The id of a step of the sequence. */
  readonly step: string
  /** The name by which the table knows the sequence; without it each word is judged when it is asked for. */
  readonly builtIn?: string | undefined
  readonly extra?: ReaderExtra | undefined
}

export interface Pool {
  readonly reader: ListReader
  readonly knowledge: Knowledge
  /** The place of the reader's step in the sequence. */
  readonly stepIndex: number
  /** Whether it costs nothing to ask what is readable: the table knows. */
  readonly isCheap: boolean
  /** How many words there are; each has a number below. */
  readonly size: number
  wordAt(at: number): string
  factsAt(at: number): WordFacts
  /** What a small child says of the thing and its picture; undefined where nobody has judged it. */
  shownAt(at: number): Shown | undefined
  /** Its kinds in a child's world, the main one first. */
  kindsAt(at: number): readonly WordKind[]
  /** The facts as one number. */
  bitsAt(at: number): number
  pronunciationAt(at: number): ListPronunciation
  syllablesAt(at: number): number
  /** The pronunciations of the table's words, as numbers. */
  readonly sounds: SoundTable
  isReadable(at: number): boolean
  /** Whether the reader knows it by heart rather than by its letters. Asked of readable words. */
  isSight(at: number): boolean
  isFit(at: number): boolean
  /** The same of a word that may have no number: a name. */
  isFitWord(word: string): boolean
  /** Whether the reader can read a word that may have no number. */
  canRead(word: string): boolean
  /** The first step at which it is readable; undefined where the sequence never gets there. */
  firstStep(at: number): number | undefined
  /** The number of a lower-case word; -1 where it cannot be listed. */
  find(word: string): number
}

/** @throws RangeError where the sequence has no such step */
export function createPool(sources: FinderSources, reader: ListReader): Pool {
  const { table, facts, fitness, phonics } = sources
  const known = knowledgeAt(reader.sequence, reader.step)
  const knowledge = reader.extra === undefined ? known : withReader(known, reader.extra)
  const beyond = [...knowledge.sightWords].filter((word) => table.rowOf(word) < 0 && isListed(word, sources))
  const judged = createJudge(sources, reader, knowledge)
  const column = (reader.builtIn && table.findColumn(reader.builtIn, phonics.accent)) || undefined
  const rows =
    column && !changesLetters(reader.extra) ? createFastJudge(sources, reader, knowledge, column, judged) : judged
  const wordAt = (at: number): string => (at < table.size ? table.wordAt(at) : (beyond[at - table.size] ?? ''))
  const factsAt = (at: number): WordFacts =>
    at < table.size ? facts.factsAt(table.placeAt(at)) : toFacts(wordAt(at), sources)
  const sounds = table.soundsIn(phonics.accent)
  const pronunciationAt = (at: number): ListPronunciation =>
    at < table.size
      ? table.pronunciationAt(at, phonics.accent)
      : toListPronunciation(phonics.read(wordAt(at)).pronunciations[0])
  return {
    reader,
    knowledge,
    stepIndex: toStepIndex(reader.sequence, reader.step),
    isCheap: rows !== judged,
    size: table.size + beyond.length,
    wordAt,
    factsAt,
    shownAt: (at) => facts.shown(wordAt(at)),
    kindsAt: (at) => facts.kindsOf(wordAt(at), factsAt(at)),
    bitsAt: (at) => (at < table.size ? facts.bitsAt(table.placeAt(at)) : packFacts(factsAt(at))),
    pronunciationAt,
    syllablesAt: (at) =>
      at < table.size ? (sounds.numbers[(sounds.starts[at] ?? 0) + 2] ?? 0) : pronunciationAt(at).syllables,
    sounds,
    isReadable: (at) => (at < table.size ? rows.isReadable(at, wordAt(at)) : true),
    isSight: (at) => (at < table.size ? rows : judged).isSight(at, wordAt(at)),
    isFit: (at) => (fitness ? fitness.isFit(wordAt(at)) : factsAt(at).fit),
    isFitWord: (word) => isFitWord(word, sources),
    canRead: (word) => isReadable(phonics.read(word), knowledge),
    firstStep: (at) => (at < table.size ? rows.firstStep(at, wordAt(at)) : judged.firstStep(at, wordAt(at))),
    find(word) {
      const row = table.rowOf(word)
      const more = row < 0 ? beyond.indexOf(word) : -1
      return more < 0 ? row : table.size + more
    },
  }
}

function isFitWord(word: string, { facts, lexicon, fitness }: FinderSources): boolean {
  if (fitness) return fitness.isFit(word)
  const place = lexicon.indexOf(word.toLowerCase())
  return place < 0 || facts.factsAt(place).fit
}

interface RowJudge {
  isReadable(row: number, word: string): boolean
  isSight(row: number, word: string): boolean
  firstStep(row: number, word: string): number | undefined
}

const changesLetters = (extra: ReaderExtra | undefined): boolean =>
  (extra?.correspondences?.length ?? 0) + (extra?.correspondencesNotYet?.length ?? 0) > 0

/** Asks the engine word by word; what no letter of it can give is told without the engine. */
function createJudge({ phonics }: FinderSources, { sequence, extra }: ListReader, knowledge: Knowledge): RowJudge {
  const letters = new Set([...knowledge.correspondences].flatMap((key) => [...key.slice(0, key.indexOf('='))]))
  for (const ending of knowledge.endings) for (const letter of ending) letters.add(letter)
  letters.add("'")
  const most = knowledge.limits.letters ?? Infinity
  const stems = [...knowledge.sightWords]
  const isPossible = (word: string): boolean =>
    (word.replace("'", '').length <= most && Array.from(word).every((letter) => letters.has(letter))) ||
    stems.some((stem) => word.startsWith(stem.toLowerCase()))
  const options = extra === undefined ? {} : { reader: extra }
  const read = (word: string): WordPronunciations => phonics.read(toWritten(word))
  return {
    isReadable: (_, word) => isPossible(word) && isReadableInAllForms(read(word), knowledge),
    isSight: (_, word) => judge(read(word), knowledge).kind === 'sight',
    firstStep: (_, word) => findFirstStepOfAllForms(read(word), sequence, options),
  }
}

/**
 * Reads the table. Words that may be known by heart, the reader's own among them, are left to the engine: few, and only
 * those can be told wrongly by a table that was made without the reader.
 */
function createFastJudge(
  { table }: FinderSources,
  { sequence, step, extra }: ListReader,
  knowledge: Knowledge,
  column: StepColumn,
  judged: RowJudge,
): RowJudge {
  const now = toStepIndex(sequence, step)
  const own = [...(extra?.sightWords ?? []), ...(extra?.sightWordsNotYet ?? [])].map((word) =>
    toSightKey(word).toLowerCase(),
  )
  const isOwn = own.length === 0 ? () => false : (word: string) => own.some((stem) => word.startsWith(stem))
  return {
    isReadable: (row, word) => (isOwn(word) ? judged.isReadable(row, word) : column.stepAt(row) <= now),
    isSight: (row, word) =>
      (column.isSightAt(row) || knowledge.sightWords.has(word) || isOwn(word)) &&
      judged.isSight(row, table.wordAt(row)),
    firstStep: (row, word) => (isOwn(word) ? judged.firstStep(row, word) : toStep(column.stepAt(row))),
  }
}

const toStep = (step: number): number | undefined => (step === Infinity ? undefined : step)

const LITTLE: WordFacts = {
  partsOfSpeech: ['little'],
  main: 'little',
  inflection: 'none',
  nameable: 'no',
  known: 3,
  fit: true,
  rarity: 0,
}

/** A word known by heart that the table lacks is listed where it is a little word (`I`), or an ordinary one; no name. */
const isListed = (word: string, sources: FinderSources): boolean => toFacts(word, sources).main !== undefined

function toFacts(word: string, { facts, lexicon }: FinderSources): WordFacts {
  const place = lexicon.indexOf(word.toLowerCase())
  const found = place < 0 ? undefined : facts.factsAt(place)
  if (found?.main !== undefined) return found
  return word === 'I' || isLittleWord(word) ? LITTLE : { ...LITTLE, partsOfSpeech: [], main: undefined, fit: false }
}
