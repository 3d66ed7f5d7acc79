// Which spellings of a sound English ordinarily uses, each with a word to show it: measured over the dictionary when the
// lexicon is built. What is not among them is an exception of the language, whatever a sequence teaches.

import type { CorrespondenceKey } from './types.ts'

export interface OrdinarySpelling {
  readonly key: CorrespondenceKey
  /** A word that shows it: `gg=ɡ` as in `egg`. */
  readonly example: string
  /** Where it is ordinary, as `toPlaces` writes it; empty for everywhere, after `!` where it is not. */
  readonly places: readonly string[]
}

/**
 * The places of a unit, by its neighbours' letters: `w-` after w, `-k` before k, `-ll-$` before ll at the end, `^-` at the start,
 * `m-_-n` between both,
 * `-V` before a vowel, `-$-1` at the end of a word without another vowel, `*` inside a word.
 */
export function toPlaces(letters: readonly string[], at: number): readonly string[] {
  const [before = BEGIN, after = END] = [letters[at - 1], letters[at + 1]]
  return after === END
    ? [`${before}-`, `-${after}`, `${before}-_-${after}`, ...(isOnlyVowel(letters, at) ? ['-$-1'] : [])]
    : [
        `${before}-`,
        `-${after}`,
        `${before}-_-${after}`,
        ...(before === BEGIN ? [] : [INSIDE]),
        ...beforeVowel(after),
        `-${after}-${toFirstSound(letters[at + 2] ?? END)}`,
      ]
}

/** To the letters before them the se of `false` is an s, and the tz of `waltz` a t. */
const toFirstSound = (letters: string): string =>
  letters === 'tz' ? 't' : letters === 'le' ? letters : letters.replace(/(?<=^[^aeiouy]+)e$/, '')

/** The ie of `pie` ends a word of one syllable, and that of `movie` does not. */
const isOnlyVowel = (letters: readonly string[], at: number): boolean =>
  letters.every((one, place) => place === at || !/[aeiouy]/.test(one))

/** The y of `farmyard` stands before a vowel, however that is spelt. */
const beforeVowel = (after: string): readonly string[] => (/^[aeiou]/.test(after) ? ['-V'] : [])

export const INSIDE = '*'
const BEGIN = '^'
const END = '$'

/** Everywhere but there: `o` as in `son` not after w. */
export const toExcepted = (place: string): string => `!${place}`

/** The word that shows a correspondence, where its place in a word allows it. `places` is asked only where it matters. */
export type FindOrdinary = (key: CorrespondenceKey, places: () => readonly string[]) => string | undefined

/** One line a spelling: key, example, places, parted by tabs. */
export function writeOrdinary(all: readonly OrdinarySpelling[]): string {
  return all.map(({ key, example, places }) => [key, example, ...places].join('\t')).join('\n')
}

export function readOrdinary(lines: string): FindOrdinary {
  const table = new Map(
    lines.split('\n').map((line) => {
      const [key = '', example, ...places] = line.split('\t')
      return [key, { example, places }] as const
    }),
  )
  return (key, toOwnPlaces) => {
    const found = table.get(key)
    if (found === undefined || found.places.length === 0) return found?.example
    return isOrdinaryThere(found.places, toOwnPlaces()) ? found.example : undefined
  }
}

/** @param places of an ordinary spelling that is not ordinary everywhere */
export function isOrdinaryThere(places: readonly string[], own: readonly string[]): boolean {
  const isElsewhere = places[0]?.startsWith('!') === true
  return isElsewhere !== own.some((place) => places.includes(isElsewhere ? toExcepted(place) : place))
}
