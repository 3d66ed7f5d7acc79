// The word of children's books that was meant by a misspelt one: two letters swapped, an apostrophe forgotten, a letter doubled or
// not, one left out or wrong, a word written as it sounds, an irregular word with the ending of others, two words run together.

import { toStraight } from '../apostrophe.ts'
import { countEdits } from '../edits.ts'
import type { SlipWords } from './lexicon/slip-words.ts'
import { toChanged, toDoubles, toLonger, toShortened, toSwapped } from './slip-letters.ts'
import { findSoundAlike } from './slip-sounds.ts'
import { findTwo } from './slip-two-words.ts'
import { isSoundWord } from './stretched.ts'
import type { Phonics } from './types.ts'

/** Shorter words have too many neighbours for a doubled letter to mean anything. */
const LEAST_FOR_DOUBLES = 4
/** Likewise for a letter left out, but for words that stand in every story: `ther`. */
const LEAST_FOR_LONGER = 5
const IN_EVERY_STORY = 500
/** A wrong letter tells still less: `zabble` is no babble. */
const LEAST_FOR_CHANGED = 6
/** Two mistakes in one word. */
const LEAST_FOR_TWO = 7
const MOST_EDITS = 2
/** So far down the words of a curriculum go. */
const COMMON = 5000
const MOST = 2

/** How a slip is looked for. */
export interface SlipWish {
  /** Which of several is taken first: those that the child can read. */
  readonly isBetter?: (candidate: string) => boolean
  /** Where each word is meant to be a common one, as in a list of words to learn: a wrong letter is looked for in short words too. */
  readonly isCommon?: boolean
}

/** The nearest words that children's books use, two at most, best first; none for a word that is right, and where nothing is near. */
export function findSlips(
  word: string,
  { read, isListed, slips }: Pick<Phonics, 'read' | 'isListed' | 'slips'>,
  { isBetter = () => true, isCommon = false }: SlipWish = {},
): readonly string[] {
  const small = toStraight(word.toLowerCase())
  // Nobody slips into `looong`, `hisss`, `hmm`.
  if (
    (!isCommon &&
      (/([aeiou])\1\1|([hmrz])\2\2$|ssss|^(?:hi|ye)sss$|[aeiou]hh$|^[aeo]ww$/.test(small) || isSoundWord(small))) ||
    !/^[a-z']{2,}$/.test(small)
  )
    return []
  const meant = slips.meant(small)
  if (meant !== undefined) return word !== small && meant.isName ? [] : [toWritten(meant.word)]
  const { rank } = slips
  if (small.length < 3 || rank(small) < Infinity) return []
  if (isListed(small) && !(isCommon && read(small).unsure)) return []
  const order = (found: readonly string[], most: number, toDoubt: (one: string) => number = () => 0) => {
    const toScore = (one: string): number => (isBetter(one) ? 0 : 2) + toDoubt(one)
    return found
      .filter((one) => one !== small && rank(one) < most)
      .sort((one, two) => toScore(one) - toScore(two) || rank(one) - rank(two))
  }
  const byStart = (one: string): number => (one[0] === small[0] ? 0 : 1)
  const byEnds = (one: string): number => (hasSameEnds(one, small) ? 0 : 1)
  // Nobody made up `hrse`.
  const isSayable = /[aeiouy]/.test(small.replace(/e$/, ''))
  const longest = small.length >= LEAST_FOR_LONGER ? Infinity : isCommon || !isSayable ? COMMON : IN_EVERY_STORY
  const near = [
    ...order(toNeighbours(small), Infinity),
    ...order(findSoundAlike(small, read, slips), Infinity, byEnds),
    ...(small.length < LEAST_FOR_DOUBLES && isSayable ? [] : order(toLonger(small), longest, byStart)),
  ]
  const found = near.length > 0 ? near : order(findFar(small, slips, isCommon), Infinity, byEnds)
  const two = near.length > 0 || word !== small ? undefined : findTwo(small, rank)
  const all = two === undefined ? found : two.isCommon ? [two.words, ...found] : [...found, two.words]
  return [...new Set(all)].slice(0, MOST).map(toWritten)
}

/** The first of them. */
export const findSlip = (...asked: Parameters<typeof findSlips>): string | undefined => findSlips(...asked)[0]

/** People slip in the middle. */
const hasSameEnds = (one: string, two: string): boolean => one[0] === two[0] && one.at(-1) === two.at(-1)

/** `I'm` */
const toWritten = (word: string): string => (word.startsWith("i'") ? `I${word.slice(1)}` : word)

function toNeighbours(word: string): readonly string[] {
  const doubles = word.length < LEAST_FOR_DOUBLES ? [] : [...word].flatMap((_, at) => toDoubles(word, at))
  // `littel` is little: nobody means the name Littell.
  const le = word.endsWith('el') ? [`${word.slice(0, -2)}le`] : []
  return [...toShortened(word), ...le, ...doubles, ...toSwapped(word)]
}

/** Words with a letter wrong or too many, and in a long word two mistakes. */
function findFar(word: string, slips: SlipWords, isCommon: boolean): readonly string[] {
  if (word.length < (isCommon ? LEAST_FOR_DOUBLES : LEAST_FOR_CHANGED)) return []
  const most = word.length < LEAST_FOR_CHANGED ? COMMON : Infinity
  const one = toChanged(word).filter((changed) => slips.rank(changed) < most)
  if (one.length > 0 || word.length < LEAST_FOR_TWO) return one
  const isNear = (other: string): boolean =>
    other.length >= LEAST_FOR_TWO &&
    Math.abs(other.length - word.length) <= MOST_EDITS &&
    countEdits(word, other, { swaps: true }) <= MOST_EDITS
  return slips.beginning(word[0] ?? '').filter(isNear)
}
