// A word in its sentence, ready to be looked round from.

import { toStraight } from '../../apostrophe.ts'
import { hasLetterOrDigit, isCapitalised, startsWithCapital } from '../../letter-kinds.ts'
import { ADVERBS } from './vocabulary.ts'

/** The sentence in small letters with straight apostrophes, and where the word stands in it. */
export interface Place {
  readonly written: readonly string[]
  readonly words: readonly string[]
  readonly index: number
}

export function toPlace(sentence: readonly string[], index: number): Place {
  return { written: sentence, words: toQuoted(sentence), index }
}

/** Small letters, straight apostrophes, and double marks for single ones that open or close what is said: `‘Read it!’ she said`. */
export function toQuoted(sentence: readonly string[]): readonly string[] {
  const words = sentence.map(toPlain)
  // Most sentences have none, or a quotation within double ones.
  if (!words.includes("'") || words.some((word) => word === '"' || word === '“')) return words
  let open = false
  return words.map((word, at) => {
    // Behind a word it is the owner's: `the hens' eggs`.
    if (word !== "'" || !(sentence[at] === '‘' || isMark(words[at - 1]))) return word
    open = sentence[at] === '‘' || !open
    return open ? '“' : '”'
  })
}

export function toPlain(word: string): string {
  return toStraight(word.toLowerCase())
}

/** True for a mark of punctuation, and for the edge of the sentence. */
export function isMark(word: string | undefined): boolean {
  return word === undefined || !hasLetterOrDigit(word)
}

/** True where a clause ends: at a mark or at the end of the sentence. */
export function isEdge(word: string | undefined): boolean {
  return isMark(word) && word !== '-' && word !== "'"
}

/** Words in -ly that are no adverbs. */
const NO_ADVERBS = new Set(
  (
    'belly billy brolly bubbly bully chilly costly crumbly cuddly curly daily deadly dolly early elderly family friendly giggly hilly holly holy jelly ' +
    'jolly july lively lolly lonely lovely monthly prickly reply silly smelly sparkly supply telly ugly weekly wobbly woolly wrinkly yearly'
  ).split(' '),
)

/** `still`, `strongly`: can stand between any two words. */
const isAdverb = (word: string): boolean => ADVERBS.has(word) || (/[a-z]{3}ly$/.test(word) && !NO_ADVERBS.has(word))

/** Dozens of clues ask the same of one place, one after the other. */
let asked: Place | undefined
let found: number[] = []

/** The index of the nth word before the place, adverbs passed over; -1 before the first. */
export function beforeIndex(place: Place, n = 1): number {
  if (asked !== place) {
    asked = place
    found = [place.index]
  }
  while (found.length <= n) found.push(toBefore(place.words, found[found.length - 1] ?? -1))
  return found[n] ?? -1
}

function toBefore(words: readonly string[], from: number): number {
  let at = from - 1
  while (at >= 0 && isAdverb(words[at] ?? '')) at--
  return Math.max(at, -1)
}

/** The nth word before the place, adverbs passed over; undefined before the first. */
export function findBefore(place: Place, n = 1): string | undefined {
  return place.words[beforeIndex(place, n)]
}

/** True where the word at `at` is written with a capital that a sentence start does not explain. */
export function isName(place: Place, at: number): boolean {
  const word = place.written[at]
  return at > 0 && word !== undefined && isCapitalised(word) && !isMark(place.words[at - 1])
}

/** True where every long word has a capital, so that capitals say nothing; `It is August` has but one, and is no title. */
export function isTitle(place: Place): boolean {
  const long = place.written.filter((word) => word.length > 3)
  const isAlone = long.length === 1 && long[0] === place.written[place.index]
  if (isAlone) return place.written.some((_, at) => at !== place.index && isName(place, at))
  return long.every((word) => startsWithCapital(word))
}

/** Where the first mark stands behind a word; the length of the sentence where none does. */
export function findEnd(words: readonly string[], index: number): number {
  const end = words.slice(index).findIndex(isMark)
  return end < 0 ? words.length : index + end
}
