// How any word is cut into units, whatever the accent: from the lexicon, by its parts and endings, or by guessing.

import { isVowel } from './arpabet.ts'
import { guessPaths, guessPlainPath } from './guess/guess.ts'
import { openModel } from './guess/model.ts'
import { CHANGES, ENDINGS, findInflections, type Inflection, inflect } from './inflect.ts'
import { toRowSet } from './lattice.ts'
import type { Lexicon } from './lexicon/open.ts'
import { type RawPronunciation, type RawUnit, toRawPronunciation } from './raw.ts'

/** One way to cut a word, with the word that its ending was put on (the word itself where it has none). */
export interface Cutting {
  readonly raw: RawPronunciation
  readonly stem: string
}

export interface Spelled {
  readonly source: 'dictionary' | 'guess'
  readonly cuttings: readonly Cutting[]
}

const NOTHING: Spelled = { source: 'guess', cuttings: [] }

/** How many nats a second guess may be dearer than the first and still be plausible. */
const PLAUSIBLE = 2.3
const MOST_GUESSES = 4
/** Longer words are not guessed: no child's book has one, and no pronunciation would mean anything. */
const LONGEST_GUESS = 60

export interface Spelling {
  /** A word of small letters a–z and inner apostrophes. Cached. */
  spell(word: string): Spelled
}

export function createSpelling(lexicon: Lexicon): Spelling {
  const set = toRowSet(lexicon.rows)
  const model = openModel(lexicon.model)
  const cache = new Map<string, Spelled>()

  function spell(word: string): Spelled {
    const known = cache.get(word)
    if (known) return known
    const spelled = findStored(word) ?? findOwner(word) ?? findInflected(word) ?? findCompound(word) ?? guess(word)
    cache.set(word, spelled)
    return spelled
  }

  function findStored(word: string): Spelled | undefined {
    const stored = lexicon.find(word)
    if (!stored) return undefined
    if ('pronunciations' in stored) {
      const cuttings = stored.pronunciations.map(({ path, stress }) => ({
        raw: toRawPronunciation(word, path, lexicon.rows, stress),
        stem: word,
      }))
      return { source: 'dictionary', cuttings }
    }
    const ending = ENDINGS[stored.ending]
    const change = CHANGES[stored.change]
    const inflection = findInflections(word).find((one) => one.ending === ending && one.change === change)
    if (!inflection) return undefined
    const stem = findStored(inflection.stem)?.cuttings.filter((_, k) => (stored.mask >> k) & 1) ?? []
    return { source: 'dictionary', cuttings: toInflected(stem, inflection) }
  }

  /** Any word or name can own something: `Zub's`, `the boys'`. */
  function findOwner(word: string): Spelled | undefined {
    if (word.endsWith("s'")) {
      const plural = spell(word.slice(0, -1))
      const mark: RawUnit = { letters: "'", spans: [[word.length - 1, word.length]], phones: [], kind: 'inflection' }
      return {
        ...plural,
        cuttings: plural.cuttings.map(({ raw, stem }) => ({ raw: { units: [...raw.units, mark] }, stem })),
      }
    }
    if (!word.endsWith("'s") || word.length < 3) return undefined
    const stem = spell(word.slice(0, -2))
    return { ...stem, cuttings: toInflected(stem.cuttings, { stem: word.slice(0, -2), ending: "'s", change: 'none' }) }
  }

  /** A known stem with a regular ending: `yakking`. */
  function findInflected(word: string): Spelled | undefined {
    for (const inflection of findInflections(word)) {
      if (inflection.stem.length < 3 || isUndoubled(inflection)) continue
      const stem = findStored(inflection.stem)
      const cuttings = stem ? toInflected(stem.cuttings, inflection) : []
      if (cuttings.length > 0) return { source: 'dictionary', cuttings }
    }
    return undefined
  }

  /** Two known words of three letters and more, the first as long as can be: `henhouse`. */
  function findCompound(word: string): Spelled | undefined {
    for (let at = word.length - 3; at >= 3; at--) {
      const second = lexicon.find(word.slice(at)) && findStored(word.slice(at))
      const first = second && findStored(word.slice(0, at))
      if (!first || !second) continue
      const cuttings = joinCuttings(first.cuttings, second.cuttings, at)
      if (cuttings.length > 0) return { source: 'dictionary', cuttings }
    }
    return undefined
  }

  function guess(word: string): Spelled {
    if (word.length > LONGEST_GUESS || !/^[a-z']+$/.test(word) || isAbbreviation(word)) return NOTHING
    const { cuttings, isSure } = guessInflected(word)
    return { source: 'guess', cuttings: isSure ? cuttings : [...cuttings, ...guessWhole(word)] }
  }

  /** The plausible pronunciations, and the plain one that a beginner would find. */
  function guessWhole(word: string): readonly Cutting[] {
    const guesses = guessPaths(set, model, word, MOST_GUESSES)
    const best = guesses[0]?.cost ?? 0
    const plain = guessPlainPath(set, model, word)
    const plausible = guesses.filter((one) => one.cost <= best + PLAUSIBLE)
    const paths = (isClosed(word) ? [plain, ...plausible] : [...plausible, plain]).flatMap((one) =>
      one ? [one.path] : [],
    )
    const distinct = paths.filter((path, at) => paths.findIndex((one) => one.join() === path.join()) === at)
    return distinct.map((path) => ({
      raw: toRawPronunciation(word, path, lexicon.rows, toGuessedStress(path, lexicon)),
      stem: word,
    }))
  }

  /** `zubbed` is read as `zub` with an ending. It is sure where the ending changed the spelling: `zubbed`, `zaking`. */
  function guessInflected(word: string): { cuttings: readonly Cutting[]; isSure: boolean } {
    for (const inflection of findInflections(word)) {
      if (!isLikelyEnding(inflection)) continue
      const cuttings = toInflected(guessWhole(inflection.stem), inflection)
      if (cuttings.length > 0) return { cuttings, isSure: inflection.change !== 'none' }
    }
    return { cuttings: [], isSure: false }
  }

  return { spell }
}

/** Said by the names of their letters, or as the words that they stand for. */
const ABBREVIATIONS = new Set(['etc', 'ok', 'vs'])

/** Letters without a vowel that are a sound all the same: `shh`, `hmm`, `zzz`, `brr`, `psst`, `tsk`. */
const isSoundWord = /sh|ss|zz|mm|hm|rr|ff|ps+t|tsk/

const isAbbreviation = (word: string): boolean =>
  ABBREVIATIONS.has(word) || (!/[aeiouy]/.test(word) && !isSoundWord.test(word))

/** A word with one vowel letter, shut in by consonants, is read as beginners read it before anything else. */
const isClosed = (word: string): boolean => /^[^aeiouy]*[aeiou][^aeiouywr]+(le|y|er|e)?$/.test(word)

/** `bag` would double its g: `baging` is no form of it. */
const isUndoubled = ({ stem, ending, change }: Inflection): boolean =>
  change === 'none' && /^(ed|ing|er|est)$/.test(ending) && /^[^aeiou]*[aeiou][bdfgklmnprtvz]$/.test(stem)

/** Whether an unknown word can be taken for a stem with this ending: `er` and `est` end too many names. */
function isLikelyEnding({ stem, ending, change }: Inflection): boolean {
  if (stem.length < 3 || ending === 'er' || ending === 'est' || change === 'y-to-i') return false
  if (change === 'double') return /[^aeiou][aeiou][^aeiou]$/.test(stem)
  if (change === 'drop-e') return /[^aeiou][aeiou][bcdfgklmnprstvz]e$/.test(stem)
  return ending === 's' || /[^aeiou][bcdfgklmnprstvwxz]$|[aeiou]{2}[bcdfgklmnprstvwxz]$/.test(stem)
}

function toInflected(stems: readonly Cutting[], inflection: Inflection): readonly Cutting[] {
  return stems.flatMap(({ raw }) => {
    const word = inflect(raw, inflection.stem.length, inflection)
    return word ? [{ raw: word, stem: inflection.stem }] : []
  })
}

/** Every pair of pronunciations of two parts, at most four: for compounds and hyphenated words. */
export function joinCuttings(first: readonly Cutting[], second: readonly Cutting[], at: number): readonly Cutting[] {
  const shift = (unit: RawUnit): RawUnit => ({
    ...unit,
    spans: unit.spans.map(([from, to]) => [from + at, to + at] as const),
  })
  return first
    .flatMap((one) =>
      second.map((two) => ({ raw: { units: [...one.raw.units, ...two.raw.units.map(shift)] }, stem: one.stem })),
    )
    .slice(0, 4)
}

/** Guessed stress: the first full vowel is strong, other vowels are weak. */
function toGuessedStress(path: readonly number[], lexicon: Lexicon): readonly (0 | 1 | 2)[] {
  const vowels = path.flatMap(
    (id) =>
      lexicon.rows[id]?.phones.filter(isVowel).map((phone) => ({ phone, letters: lexicon.rows[id]?.letters ?? '' })) ??
      [],
  )
  const isWeak = ({ phone, letters }: { phone: string; letters: string }) =>
    phone === 'AH' && !/^(u|o|ou|oo|o_e)$/.test(letters)
  const strong = Math.max(
    0,
    vowels.findIndex((vowel) => !isWeak(vowel)),
  )
  return vowels.map((_, k) => (k === strong ? 1 : 0))
}
