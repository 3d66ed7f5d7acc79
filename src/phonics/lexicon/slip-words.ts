// What the lexicon file says of slips: the words that children's books use, and listed words that mostly are slips.

import { findLine, findLinesFrom, writeLines } from '../../sorted/lines.ts'
import { rememberLast } from '../remember.ts'

/** What is meant by a word that the dictionary has, or an ending makes, and that is mostly a slip: `very` by `verry`. */
interface Meant {
  readonly word: string
  /** Whether somebody may be called what was written. */
  readonly isName: boolean
}

export interface SlipWords {
  /** The place in the order of use of a word that may be proposed; infinite for all others. */
  rank(word: string): number
  meant(word: string): Meant | undefined
  /** The words that may be proposed with such consonants, as `toSkeleton` gives them. */
  alike(skeleton: string): readonly string[]
  /** The words that may be proposed and begin so. */
  beginning(letters: string): readonly string[]
}

/** Where nothing is known. */
export const NO_SLIPS: SlipWords = openSlips(new Uint8Array())

/** What is written of slips. */
export interface SlipSource {
  /** The words that may be proposed, in the order of use. */
  readonly everyday: readonly string[]
  /** Slips of them. */
  readonly slips: ReadonlyMap<string, string>
  /** Those slips that somebody may be called. */
  readonly names: ReadonlySet<string>
}

/** Marks beside a word what is no place in the order of use. */
const MEANS = '='
const MEANS_OR_NAME = '?'
/** Before a skeleton, which no word begins with. */
const SKELETON = '/'
const BASE = 36

/** One table of lines: beside a word its place in the order of use or what it means, beside a skeleton its words. */
export function writeSlips({ everyday, slips, names }: SlipSource, toSkeleton: (word: string) => string): string {
  const groups = new Map<string, string[]>()
  for (const word of everyday) groups.set(toSkeleton(word), [...(groups.get(toSkeleton(word)) ?? []), word])
  return writeLines([
    ...everyday.map((word, at) => [word, at.toString(BASE)] as const),
    ...[...slips].map(([word, meant]) => [word, `${names.has(word) ? MEANS_OR_NAME : MEANS}${meant}`] as const),
    ...[...groups].map(([skeleton, words]) => [`${SKELETON}${skeleton}`, words.join(' ')] as const),
  ])
}

const isMark = (mark: string | undefined): boolean => mark === MEANS || mark === MEANS_OR_NAME

/** Nothing is read before it is asked for, and then one line: a story asks for each of its words. */
export function openSlips(bytes: Uint8Array): SlipWords {
  // What a word means is asked for first, and its place in the order of use right after.
  const find = rememberLast((word) => findLine(bytes, word))
  const byBeginning = new Map<string, readonly string[]>()
  return {
    rank(word) {
      const found = find(word)
      return found === undefined || isMark(found[0]) ? Number.POSITIVE_INFINITY : Number.parseInt(found, BASE)
    },
    meant(word) {
      const found = find(word)
      return isMark(found?.[0]) ? { word: found?.slice(1) ?? '', isName: found?.[0] === MEANS_OR_NAME } : undefined
    },
    alike: (skeleton) => findLine(bytes, SKELETON + skeleton)?.split(' ') ?? [],
    beginning(letters) {
      const known = byBeginning.get(letters)
      if (known !== undefined) return known
      const found = findLinesFrom(bytes, letters).filter(([, value]) => !isMark(value[0]))
      const words = found.map(([word]) => word)
      byBeginning.set(letters, words)
      return words
    },
  }
}
