// Which words people put together into one, so that `henhouse` is known by its parts and `catand` is not.

import { loadChildWords } from './children.ts'
import { isPart, LEAST_LETTERS } from './compound-parts.ts'
import { frequencyRank } from './frequency.ts'
import type { DictionaryWord } from './pronunciations.ts'
import type { WordNet } from './wordnet.ts'
import type { Compound } from './wordnet-compounds.ts'

/**
 * How far a word goes with others, as first part or as last: not at all, where the other part is strong, or with any part; 3 where so
 * many words end in it that another is sure to be one.
 */
type Bond = 0 | 1 | 2 | 3

export interface PartOfCompounds {
  readonly word: string
  readonly first: Bond
  readonly last: Bond
}

/** A thing of every day may join a strong part though nobody has joined them yet. */
const EVERYDAY = 10_000
/** A part of so many known compounds goes with any everyday thing: snow, sun, fire; house, boat, berry. */
const STRONG = 4
/** Words that end so are made every day: `-man`, `-house`, `-berry`, `-fish`, `-wood`. Of 400 pairs of everyday nouns drawn by seed five are taken for words so. */
const SURE = 20

/** The parts, by the compounds that the dictionary has: two words in use, said as the one and then the other. */
export function findCompoundParts(
  words: readonly DictionaryWord[],
  wordnet: WordNet,
  others: readonly Compound[],
): readonly PartOfCompounds[] {
  const sounds = new Map(
    words.map(({ word, transcriptions }) => [word, transcriptions.map(({ phones }) => toLoose(phones))]),
  )
  const firsts = new Map<string, number>()
  const lasts = new Map<string, number>()
  const add = (counts: Map<string, number>, word: string) => counts.set(word, (counts.get(word) ?? 0) + 1)
  for (const { first, last } of others) {
    add(firsts, first)
    add(lasts, last)
  }
  for (const { word } of words) {
    if (wordnet.isName(word) || !(frequencyRank.has(word) || wordnet.isNoun(word))) continue
    for (let at = LEAST_LETTERS; at <= word.length - LEAST_LETTERS; at++) {
      const [first, last] = [word.slice(0, at), word.slice(at)]
      if (!isPart(first, wordnet) || !isPart(last, wordnet) || !isSaidAsBoth(word, first, last, sounds)) continue
      add(firsts, first)
      add(lasts, last)
    }
  }
  const grade = (counts: ReadonlyMap<string, number>, word: string): Bond => {
    const count = counts.get(word) ?? 0
    if (counts === lasts && count >= SURE) return 3
    // One compound alone, of a rare part, makes none: `militiaman`, but no `militiabar`.
    const isUsed = count > 1 || (count > 0 && (frequencyRank.get(word) ?? Infinity) < EVERYDAY)
    if (count >= STRONG || (counts === lasts && isKnownFood(word, wordnet))) return 2
    return isUsed || isEverydayThing(word, wordnet) ? 1 : 0
  }
  return words
    .filter(({ word }) => isPart(word, wordnet))
    .map(({ word }) => ({ word, first: grade(firsts, word), last: grade(lasts, word) }))
    .filter(({ first, last }) => first + last > 0)
}

const CHILDREN = loadChildWords()

const isEverydayThing = (word: string, wordnet: WordNet): boolean =>
  (((frequencyRank.get(word) ?? Infinity) < EVERYDAY && wordnet.posOf(word).noun.tags > 0) || isKnown(word)) &&
  wordnet.isNoun(word)

const isKnown = (word: string): boolean => CHILDREN.ownGrade(word) >= 2

/** What is eaten is made of anything: a mudpie, an oatcake, a cherrybun. */
const isKnownFood = (word: string, wordnet: WordNet): boolean => isKnown(word) && wordnet.lexFile(word) === 'food'

/** `terrapin` is not said as terra and pin would be, nor `carpet` as car and pet. */
function isSaidAsBoth(
  word: string,
  first: string,
  last: string,
  sounds: ReadonlyMap<string, readonly string[]>,
): boolean {
  const whole = sounds.get(word) ?? []
  return (sounds.get(first) ?? []).some((one) =>
    (sounds.get(last) ?? []).some((two) => whole.includes(`${one} ${two}`)),
  )
}

/** Sounds with their weak vowels alike: `man` in `postman`. */
const toLoose = (phones: readonly string[]): string =>
  phones.map((phone) => (/^(AH|EH|IH|IY)$/.test(phone) ? 'IH' : phone === 'AO' ? 'AA' : phone)).join(' ')
