// The word of children's books that was meant by a misspelt one: two letters swapped, an apostrophe forgotten, a letter doubled or
// not, one left out, a word written as it sounds, an irregular word with the ending of others.

import { toDoubles, toLonger, toShortened, toSwapped } from './slip-letters.ts'
import { findSoundAlike } from './slip-sounds.ts'
import type { Phonics } from './types.ts'

/** Shorter words have too many neighbours for a doubled letter to mean anything. */
const LEAST_FOR_DOUBLES = 4
/** Likewise for a letter left out, but for words that stand in every story: `ther`. */
const LEAST_FOR_LONGER = 5
const IN_EVERY_STORY = 200

/**
 * The nearest word that children's books use; undefined for a word that is right, and where nothing is near.
 * @param isBetter which of several is taken first: those that the child can read
 */
export function findSlip(
  word: string,
  { read, isListed, slips }: Pick<Phonics, 'read' | 'isListed' | 'slips'>,
  isBetter: (candidate: string) => boolean = () => true,
): string | undefined {
  const small = word.toLowerCase().replace(/[’‘ʼ]/g, "'")
  // Nobody slips into `looong`.
  if (/([aeiou])\1\1/.test(small) || !/^[a-z']{2,}$/.test(small)) return undefined
  const meant = slips.slips.get(small)
  if (meant !== undefined) return word !== small && slips.names.has(small) ? undefined : toWritten(meant)
  if (small.length < 3 || slips.everyday.has(small) || isListed(small)) return undefined
  const rank = (one: string): number => slips.everyday.get(one) ?? Infinity
  const byRank = (one: string, two: string): number => rank(one) - rank(two)
  const near = [...new Set([...toNeighbours(small), ...findSoundAlike(small, read, slips)])]
    .filter((one) => one !== small && slips.everyday.has(one))
    .sort(byRank)
  const longest = small.length < LEAST_FOR_LONGER ? IN_EVERY_STORY : Infinity
  const found =
    near.length > 0 || small.length < LEAST_FOR_DOUBLES
      ? near
      : toLonger(small)
          .filter((one) => rank(one) < longest)
          .sort(byRank)
  const best = found.find(isBetter) ?? found[0] ?? (word === small ? findTwo(small, rank) : undefined)
  return best === undefined ? undefined : toWritten(best)
}

/** Two words without the space between, as `redhen`. */
function findTwo(word: string, rank: (one: string) => number): string | undefined {
  for (let at = LEAST_PART; at <= word.length - LEAST_PART; at++) {
    const [one, two] = [word.slice(0, at), word.slice(at)]
    if (rank(one) < Infinity && rank(two) < Infinity) return `${one} ${two}`
  }
  return undefined
}

const LEAST_PART = 3

/** `I'm` */
const toWritten = (word: string): string => (word.startsWith("i'") ? `I${word.slice(1)}` : word)

function toNeighbours(word: string): readonly string[] {
  const doubles = word.length < LEAST_FOR_DOUBLES ? [] : [...word].flatMap((_, at) => toDoubles(word, at))
  // `littel` is little: nobody means the name Littell.
  const le = word.endsWith('el') ? [`${word.slice(0, -2)}le`] : []
  return [...toShortened(word), ...le, ...doubles, ...toSwapped(word)]
}
