// Finds the words that a reader can read and that fit what is asked.

import { isForeignSpelling } from '../phonics/index.ts'
import { type Shown, type ShownClass, toUseOfBits, type WordFacts, type WordKind } from '../words/index.ts'
import { asksForSounds, isByHeart, toTest, type WordFilters } from './filters.ts'
import { toWritten } from './forms.ts'
import { OTHER_FORM, shuffle, toUsefulnessOfBits, type WordOrderName } from './order.ts'
import type { Pool } from './pool.ts'
import type { ListPronunciation } from './table.ts'

export interface FoundWord {
  readonly word: string
  /** What it mainly is, of the kinds that were asked for. */
  readonly kind: WordKind
  readonly facts: WordFacts
  /** Known by heart, not by its letters. */
  readonly isSight: boolean
  /** The id of the first step at which it is readable; null where only this reader can read it. */
  readonly readableAt: string | null
  readonly pronunciation: ListPronunciation
  /** What a small child says of the thing and its picture; undefined where nobody has judged it. */
  readonly shown: Shown | undefined
}

export interface WordQuery extends WordFilters {
  readonly order?: WordOrderName
  /** For a shuffled order. */
  readonly seed?: number
  /** How many at most; all by default. */
  readonly count?: number
}

export interface FoundWords {
  readonly words: readonly FoundWord[]
  /** Whether there are more than were asked for. */
  readonly more: boolean
}

/**
 * The most useful words are taken, and then put in the order that is asked for; a shuffled list draws from all that
 * children know before it takes any other. Every word is fit for children.
 */
export function findWords(pool: Pool, query: WordQuery = {}): FoundWords {
  const wanted = query.count ?? Infinity
  const { numbers, more } = takeFit(toCandidates(pool, query), pool, query, wanted)
  const words = numbers.map((at) => toFoundWord(at, pool, query.kinds))
  return { words: query.order === 'alphabetical' ? words.sort(byWord) : words, more }
}

/** Of these words, those that can be read and fit what is asked; as what they are asked for, whatever else they are. */
export function findThese(pool: Pool, query: WordQuery, words: readonly string[]): readonly FoundWord[] {
  const { kinds, ...filters } = query
  const [test, isWanted] = [toTest(filters, pool), toLastTest(pool, query)]
  const numbers = words.map((word) => pool.find(word)).filter((at) => at >= 0 && pool.isReadable(at))
  const found = numbers.filter((at) => test(at) && isWanted(at)).map((at) => toFoundWord(at, pool, undefined))
  const [kind] = kinds ?? []
  return found.map((one) => (kind === undefined ? one : { ...one, kind }))
}

/** Numbers of words in order of use, or shuffled, before the dear questions are asked. */
function toCandidates(pool: Pool, query: WordQuery): readonly number[] {
  const test = toTest(query, pool)
  const forPictures = query.picture === true || query.object === true
  const toTier = openTiers(query, pool)
  const isCheap = pool.isCheap
  const found: number[] = []
  for (let at = 0; at < pool.size; at++) if ((!isCheap || pool.isReadable(at)) && test(at)) found.push(at)
  if (query.order === 'shuffled') return shuffleByTier(found, pool, toTier, query.seed ?? 1)
  const toCost = (at: number): number => {
    const bits = pool.bitsAt(at)
    const byHeart = isByHeart(at, pool) ? toCostByHeart(bits, query) : 0
    return toTier(at) * TIER + toUsefulnessOfBits(bits, forPictures) + byHeart
  }
  // Use and number in one: plain numbers sort many times faster than objects.
  const keys = Float64Array.from(found, (at) => toCost(at) * PLACES + at)
  return Array.from(keys.sort(), (key) => key % PLACES)
}

/** More than any word costs by its use. */
const TIER = 10_000

/** What a child says first comes first, then what a word of yours makes plain, then what is likelier called otherwise. */
const TIERS: Readonly<Record<ShownClass, number>> = { fine: 0, hint: 1, likelier: 2, no: 4 }
const NOT_JUDGED = 3

/** In which class a word stands as an object or a picture, where either is asked for; 0 for all where not. */
function openTiers({ picture, object }: WordQuery, pool: Pool): (at: number) => number {
  const as = object ? 'object' : picture ? 'picture' : undefined
  if (as === undefined) return () => 0
  return (at) => {
    const shown = pool.shownAt(at)
    return shown === undefined ? NOT_JUDGED : TIERS[shown[as]]
  }
}

/** More than there are words. */
const PLACES = 1 << 20

/**
 * Words known by heart come after what is as well known: they are no practice in reading by letters. Not so the little
 * words, without which there is no sentence, and not where somebody is to write: `said` is as good as a base form there.
 */
const BY_HEART = 100

function toCostByHeart(bits: number, { forWriting }: WordQuery): number {
  const { isInflected, isLittle } = toUseOfBits(bits)
  if (forWriting) return isInflected ? -OTHER_FORM : 0
  return isLittle ? 0 : BY_HEART
}

function shuffleByTier(numbers: readonly number[], pool: Pool, toTier: (at: number) => number, seed: number): number[] {
  const toGroup = (at: number): number => 2 * toTier(at) + (toUseOfBits(pool.bitsAt(at)).known >= 2 ? 0 : 1)
  const groups = [...new Set(numbers.map(toGroup))].sort((left, right) => left - right)
  return groups.flatMap((group) =>
    shuffle(
      numbers.filter((at) => toGroup(at) === group),
      seed,
    ),
  )
}

function takeFit(
  candidates: readonly number[],
  pool: Pool,
  query: WordQuery,
  wanted: number,
): { numbers: number[]; more: boolean } {
  const numbers: number[] = []
  const isWanted = toLastTest(pool, query)
  for (const at of candidates) {
    if (!isWanted(at)) continue
    if (numbers.length === wanted) return { numbers, more: true }
    numbers.push(at)
  }
  return { numbers, more: false }
}

/** What is dear to ask, so only of words that fit all else. */
function toLastTest(pool: Pool, query: WordQuery): (at: number) => boolean {
  const now = pool.stepIndex
  const isSounded = asksForSounds(query)
  const { accent } = pool.reader.sequence
  return (at) =>
    pool.isFit(at) &&
    !isForeignSpelling(pool.wordAt(at), accent) &&
    (pool.isCheap || pool.isReadable(at)) &&
    !(isSounded && pool.isSight(at)) &&
    !(query.newAtStep && pool.firstStep(at) !== now) &&
    !(query.newFrom !== undefined && (pool.firstStep(at) ?? now) < query.newFrom)
}

function toFoundWord(at: number, pool: Pool, asked: WordQuery['kinds']): FoundWord {
  const kinds = pool.kindsAt(at)
  const step = pool.firstStep(at)
  return {
    word: toWritten(pool.wordAt(at)),
    kind: kinds.find((kind) => asked?.includes(kind)) ?? kinds[0] ?? 'describing',
    facts: pool.factsAt(at),
    isSight: pool.isSight(at),
    readableAt: step === undefined ? null : (pool.reader.sequence.steps[step]?.id ?? null),
    pronunciation: pool.pronunciationAt(at),
    shown: pool.shownAt(at),
  }
}

const byWord = (left: FoundWord, right: FoundWord): number => (left.word < right.word ? -1 : 1)
