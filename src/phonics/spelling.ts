// How any word is cut into units, whatever the accent: from the lexicon, by its parts and endings, or by guessing.

import { findSeam } from './compounds.ts'
import { guessPaths } from './guess/guess.ts'
import { openModel } from './guess/model.ts'
import { createPlainReader } from './guess/plain.ts'
import { CHANGES, ENDINGS, findInflections, type Inflection, inflect } from './inflect.ts'
import { toRowSet } from './lattice.ts'
import type { Lexicon } from './lexicon/open.ts'
import { findRightForm } from './misspelt.ts'
import { type RawPronunciation, type RawUnit, toRawPronunciation } from './raw.ts'
import { findSqueezed, stretch } from './stretched.ts'

/** One way to cut a word, with the word that its ending was put on (the word itself where it has none). */
export interface Cutting {
  readonly raw: RawPronunciation
  readonly stem: string
}

export interface Spelled {
  readonly source: 'dictionary' | 'guess'
  readonly cuttings: readonly Cutting[]
  /** The word that was meant, where an ending was put on without its change. */
  readonly meant?: string
}

const NOTHING: Spelled = { source: 'guess', cuttings: [] }

/** How many nats a second guess may be dearer than the first and still be plausible. */
export const PLAUSIBLE = 2.3
const MOST_GUESSES = 4
/** Longer words are not guessed: no child's book has one, and no pronunciation would mean anything. */
const LONGEST_GUESS = 60

export interface Spelling {
  /** A word of small letters a–z and inner apostrophes. Cached. */
  spell(word: string): Spelled
}

export function createSpelling(lexicon: Lexicon): Spelling {
  const set = toRowSet(lexicon.rows)
  const toModel = openModel(lexicon.model)
  const plain = createPlainReader(set)
  const cache = new Map<string, Spelled>()

  function spell(word: string): Spelled {
    const known = cache.get(word)
    if (known) return known
    const spelled =
      findStored(word) ??
      findOwner(word) ??
      findMisspelt(word) ??
      findInflected(word) ??
      findCompound(word) ??
      findStretched(word) ??
      guess(word)
    cache.set(word, spelled)
    return spelled
  }

  function findStored(word: string): Spelled | undefined {
    const stored = lexicon.find(word)
    if (!stored) return undefined
    if ('pronunciations' in stored) {
      const cuttings = stored.pronunciations.map(({ path, stress }) => ({
        raw: fromY(word, toRawPronunciation(word, path, lexicon.rows, stress)),
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

  /** The i of `happiness` and `laziness` stands for the y of `happy` and `lazy`. */
  function fromY(word: string, raw: RawPronunciation): RawPronunciation {
    const [, stem] = /^(.+[^aeiou])i(?:ness|less|ful|ly|ment|hood)(?:es)?$/.exec(word) ?? []
    if (stem === undefined || lexicon.indexOf(`${stem}y`) < 0) return raw
    const units = raw.units.map((unit) =>
      unit.letters === 'i' && unit.phones[0] === 'IY' && unit.spans[0]?.[0] === stem.length
        ? { ...unit, base: 'y' }
        : unit,
    )
    return { units }
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

  /** Two known words that people put together: `henhouse`. */
  function findCompound(word: string): Spelled | undefined {
    const at = findSeam(word, lexicon)
    const first = at === undefined ? undefined : findStored(word.slice(0, at))
    const second = at === undefined ? undefined : findStored(word.slice(at))
    if (at === undefined || !first || !second) return undefined
    const cuttings = joinCuttings(first.cuttings, second.cuttings, at)
    return cuttings.length > 0 ? { source: 'dictionary', cuttings } : undefined
  }

  /** A known word with an ending that should have changed it. It is no word, so it has no pronunciation. */
  function findMisspelt(word: string): Spelled | undefined {
    for (const inflection of findInflections(word)) {
      const meant = lexicon.find(inflection.stem) && findRightForm(inflection)
      if (meant !== undefined && lexicon.find(meant)) return { ...NOTHING, meant }
    }
    return undefined
  }

  /** `Nooo`, `looong`: a known word drawn out, or else the letters of the short one. */
  function findStretched(word: string): Spelled | undefined {
    const squeezed = findSqueezed(word)
    const known = squeezed.find((one) => lexicon.find(one.word)) ?? squeezed[0]
    if (!known) return undefined
    const { cuttings } = spell(known.word)
    return { source: 'guess', cuttings: cuttings.map(({ raw, stem }) => ({ raw: stretch(raw, word, known), stem })) }
  }

  function guess(word: string): Spelled {
    if (word.length > LONGEST_GUESS || !/^[a-z']+$/.test(word) || isAbbreviation(word)) return NOTHING
    const { cuttings, isSure } = guessInflected(word)
    return { source: 'guess', cuttings: isSure ? cuttings : [...cuttings, ...guessWhole(word)] }
  }

  /** The plain pronunciations; where the letters are not plain, or the word is longer, what the dictionary makes likely too. */
  function guessWhole(word: string): readonly Cutting[] {
    const plains = plain.read(word)
    const isEnough = plains.length > 0 && isShort(plains[0]?.stress ?? [])
    const guesses = isEnough ? [] : guessPaths(set, toModel(), word, MOST_GUESSES)
    const best = guesses[0]?.cost ?? 0
    const found = [...plains, ...guesses.filter((one) => one.cost <= best + PLAUSIBLE)]
    const distinct = found.filter(({ path }, at) => found.findIndex((one) => one.path.join() === path.join()) === at)
    return distinct.map(({ path, stress }) => ({
      raw: toRawPronunciation(word, path, lexicon.rows, stress),
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

/** A word of one vowel is read by its letters and nothing else. */
const isShort = (stress: readonly number[]): boolean => stress.length < 2

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
