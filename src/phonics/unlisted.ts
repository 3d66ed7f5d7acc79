// Words that nobody listed: read by their letters as a beginner reads them, or as the dictionary makes likely.

import { isVowel } from './arpabet.ts'
import { type Cutting, type Spelled, toInflected } from './cutting.ts'
import { isDoubtedAsName } from './guess/doubted-name.ts'
import { type Guess, guessPaths } from './guess/guess.ts'
import { openModel } from './guess/model.ts'
import { createPlainReader, type Plain, type PlainReader } from './guess/plain.ts'
import { endsOpen, isSaidAlike, isSaidAlikeThroughout, isSaidOddly, looksForeign } from './guess/world.ts'
import { findInflections, type Inflection } from './inflect.ts'
import { type RowSet, toRowSet } from './lattice.ts'
import type { Lexicon } from './lexicon/open.ts'
import { findRightDerived, findRightForm } from './misspelt.ts'
import { toRawPronunciation } from './raw.ts'
import { findRunTogether } from './run-together.ts'
import { isSoundWord, squeezeNoise, stretch } from './stretched.ts'

const NOTHING: Spelled = { source: 'guess', cuttings: [] }

/** How many nats a second guess may be dearer than the first and still be plausible. */
export const PLAUSIBLE = 2.3
const MOST_GUESSES = 4
/** Below this share the first pronunciation is a mere guess: of names of many lands, it is as often wrong as right. */
const LEAST_SHARE = 0.75
/** With more syllables there are too many ways. */
const MOST_VOWELS = 4
/** Longer words are not guessed: no child's book has one, and no pronunciation would mean anything. */
const LONGEST_GUESS = 60

/** Ways to read a word that stands in no list, each for its kind of word. */
export interface Unlisted {
  findMisspelt(word: string): Spelled | undefined
  findTorn(word: string): Spelled | undefined
  findNoise(word: string): Spelled | undefined
  /** A word of one vowel that is read by its letters, whoever bears it as a name: `zike`. */
  findPlain(word: string): Spelled | undefined
  guess(word: string): Spelled
}

export function createUnlisted(lexicon: Lexicon): Unlisted {
  const toModel = openModel(lexicon.model)
  // Laid out when the first word is guessed.
  let opened: { readonly set: RowSet; readonly plain: PlainReader } | undefined
  const open = () => {
    if (opened) return opened
    const set = toRowSet(lexicon.rows)
    return (opened = { set, plain: createPlainReader(set) })
  }

  /** A known word with an ending that should have changed it. It is no word, so it has no pronunciation. */
  function findMisspelt(word: string): Spelled | undefined {
    if (isHiss.test(word)) return undefined
    const derived = findRightDerived(word)
    if (derived !== undefined && lexicon.find(derived)) return { ...NOTHING, meant: derived }
    for (const inflection of findInflections(word)) {
      // Of `seing` the stem is no `se`.
      if (inflection.stem.length < 3) continue
      const meant = lexicon.find(inflection.stem) && findRightForm(inflection)
      if (meant !== undefined && lexicon.find(meant)) return { ...NOTHING, meant }
    }
    return undefined
  }

  /** Asked when nothing else knows the word: `theme` and `brand` are words. */
  function findTorn(word: string): Spelled | undefined {
    const meant = findRunTogether(word, lexicon)
    return meant === undefined ? undefined : { ...NOTHING, meant }
  }

  /** `Shhh`, `Brrr`: letters without a vowel that are a sound all the same. */
  function findNoise(word: string): Spelled | undefined {
    if (!isSoundWord(word)) return undefined
    const squeezed = squeezeNoise(word)
    const path = open().plain.readNoise(squeezed.word)
    const raw = path && stretch(toRawPronunciation(path, lexicon.rows, []), word, squeezed)
    return raw && { source: 'guess', cuttings: [{ raw, stem: word }] }
  }

  function findPlain(word: string): Spelled | undefined {
    const plains = open().plain.read(word)
    if (plains.length === 0 || !isShort(plains[0]?.stress ?? [])) return undefined
    return { source: 'guess', cuttings: guessWhole(word).cuttings, unsureAsName: true }
  }

  function guess(word: string): Spelled {
    if (word.length > LONGEST_GUESS || !/^[a-z']+$/.test(word) || isAbbreviation(word)) return NOTHING
    const { cuttings, kind } = guessInflected(word)
    // `Zubs` is sure; `Eluned` may be a name and no form of `elune`, and so may `Zubbies` and `Enes`.
    const isDoubtful = !word.endsWith('s') || /^..es$|ies$/.test(word)
    const doubt = isDoubtful ? ({ unsureAsName: true } as const) : {}
    const inflected: Spelled = { source: 'guess', cuttings, ...doubt }
    if (kind === 'changed') return inflected
    const whole = guessWhole(word)
    const all = { source: 'guess', cuttings: [...cuttings, ...whole.cuttings] } as const
    if (looksForeign(word)) return { ...all, unsure: true }
    // `sploshed` and `plonking` have an ending, and are not read letter by letter before it is taught.
    if (kind === 'ended') return inflected
    if (kind === 'plural') return { ...all, ...doubt }
    if (cuttings.length > 0) return { ...all, unsureAsName: true }
    const certainty = toCertainty(word, whole)
    const units = whole.cuttings[0]?.raw.units ?? []
    const isDoubted = isDoubtedAsName(units)
    const isLikely = certainty === 'word' || (certainty === 'sure' && isDoubted)
    if (certainty === 'sure' && !isLikely) return all
    return { ...all, ...(isLikely ? { unsureAsName: true } : { unsure: true }) }
  }

  /** The plain pronunciations; where the letters are not plain, or the word is longer, what the dictionary makes likely too. */
  function guessWhole(word: string): Whole {
    const { set, plain } = open()
    const plains = plain.read(word)
    const isEnough = plains.length > 0 && isShort(plains[0]?.stress ?? [])
    const guesses = isEnough ? [] : guessPaths(set, toModel(), word, MOST_GUESSES)
    const best = guesses[0]?.cost ?? 0
    const found = [...plains, ...guesses.filter((one) => one.cost <= best + PLAUSIBLE)]
    const distinct = found.filter(({ path }, at) => found.findIndex((one) => one.path.join() === path.join()) === at)
    const cuttings = distinct.map(({ path, stress }) => ({
      raw: toRawPronunciation(path, lexicon.rows, stress),
      stem: word,
    }))
    return { cuttings, share: isEnough || isShut(word, plains) ? 1 : findShare(cuttings[0], guesses) }
  }

  /** How likely the first pronunciation is among all: those count as one that differ in a weak vowel only. */
  function findShare(first: Cutting | undefined, guesses: readonly Guess[]): number {
    const sounds = toLoose(first?.raw.units.flatMap(({ phones }) => phones) ?? [])
    const alike = guesses.filter(({ path }) => toLoose(path.flatMap((id) => lexicon.rows[id]?.phones ?? [])) === sounds)
    return alike.reduce((sum, { share }) => sum + share, 0)
  }

  /** `zubbed` is read as `zub` with an ending. Nothing else is meant where the ending changed the spelling: `zubbed`, `zaking`. */
  function guessInflected(word: string): { cuttings: readonly Cutting[]; kind: EndingKind } {
    for (const inflection of findInflections(word)) {
      if (!isLikelyEnding(inflection)) continue
      const stem = guessWhole(inflection.stem)
      const cuttings = toInflected(stem.cuttings, inflection)
      // `Eluned` is no form of `elun`, nor `Viesturs` of `viestur`; but `Zubs` are several.
      const isOne = isShort(stem.cuttings[0]?.raw.units.flatMap(({ stress }) => stress ?? []) ?? [])
      if (cuttings.length > 0) return { cuttings, kind: toKind(inflection, stem.share === 1, isOne) }
    }
    return { cuttings: [], kind: 'doubtful' }
  }

  return { findMisspelt, findTorn, findNoise, findPlain, guess }
}

/** How an ending is seen on a word that nobody listed: by the letters that it changed, on a stem that reads plainly, or neither. */
type EndingKind = 'changed' | 'ended' | 'plural' | 'doubtful'

function toKind({ ending, change }: Inflection, isPlain: boolean, isOneBeat: boolean): EndingKind {
  if (change === 'double' || change === 'drop-e') return 'changed'
  if (!isPlain) return 'doubtful'
  if (change === 'y-to-i') return 'ended'
  if (!isOneBeat) return 'doubtful'
  return ending === 's' ? 'plural' : 'ended'
}

/** The pronunciations of a whole word, and how likely the first is. */
interface Whole {
  readonly cuttings: readonly Cutting[]
  readonly share: number
}

/** A plain word whose syllables are all shut in has one reading, however long: `momtib`. */
const isShut = (word: string, plains: readonly Plain[]): boolean =>
  plains.length > 0 && /[^aeiouyw]$|le$|[^aeiou]y$/.test(word)

/**
 * `sure` is what is plain, and what a word has in common with other lands; `word` is what English letters make likely, which
 * is right for a word and not for a name.
 */
function toCertainty(word: string, { cuttings, share }: Whole): 'none' | 'sure' | 'word' {
  const units = cuttings[0]?.raw.units ?? []
  if (share === 1) return 'sure'
  if (share < LEAST_SHARE || hasOpenA(cuttings[0]) || isSaidOddly(units)) return 'none'
  const vowels = units.filter(({ phones }) => phones.some(isVowel))
  if (vowels.length > MOST_VOWELS && !isBuilt.test(word)) return 'none'
  if (isSaidAlikeThroughout(units)) return 'sure'
  const isLong = vowels.length > 2 && !isBuilt.test(word)
  // A silent e at the end of a longer word is an English way: A-yi-ze.
  const isSplit = vowels.length > 1 && /_e$|re$/.test(vowels.at(-1)?.letters ?? '') && !isBuilt.test(word)
  return isLong || isSplit || (endsOpen(word) && !isSaidAlike(units)) ? 'none' : 'word'
}

/** Long words that English builds, `unhelpfulness`: these endings are said in one way. */
const isBuilt = /(?:able|age|ally|ed|ers?|est|ful|ing|ish|ive|less|ly|ment|ness|ous|some|ther|tion|ward)s?$|[^aeiou]y$/

/** Said by the names of their letters, or as the words that they stand for. */
const ABBREVIATIONS = new Set(['etc', 'ok', 'vs'])

/** A word that hisses is drawn out: nobody who writes `Hisss` means hisses. */
const isHiss = /^(?:hi|ki|pi|swi)sss+$|ssss/

const isAbbreviation = (word: string): boolean =>
  ABBREVIATIONS.has(word) || (!/[aeiouy]/.test(word) && !isSoundWord(word))

/** `Tadeo`, `Naveen`, `Kamil`, `Rachit`: an a before one consonant and a vowel is no short a in most names of the world. */
const hasOpenA = (cutting: Cutting | undefined): boolean => {
  const units = cutting?.raw.units ?? []
  const isTwo = units.filter(({ phones }) => phones.some(isVowel)).length === 2
  return units.some(
    ({ letters, phones }, at) =>
      letters === 'a' &&
      (phones[0] === 'AE' || (isTwo && phones[0] === 'AH')) &&
      /^(?:.|[cst]h)$/.test(units[at + 1]?.letters ?? '') &&
      units[at + 2]?.phones.some(isVowel),
  )
}

const toLoose = (phones: readonly string[]): string =>
  phones.map((phone) => (/^(?:IH|EH|AE)$/.test(phone) ? 'AH' : phone === 'AO' ? 'AA' : phone)).join(' ')

/** A word of one vowel is read by its letters and nothing else. */
const isShort = (stress: readonly number[]): boolean => stress.length < 2

/** Whether an unknown word can be taken for a stem with this ending: `er` and `est` end too many names. */
function isLikelyEnding({ stem, ending, change }: Inflection): boolean {
  if (stem.length < 3 || ending === 'er' || ending === 'est') return false
  // `zubbies`; a word of one beat such as `plies` may be of a `ply` or a `plie`.
  if (change === 'y-to-i') return ending === 'es' && /[aeiouy][^aeiouy]+y$/.test(stem)
  // `glis` and `whes` end in s as `bus` does: no `gli` is known of which there could be several.
  if (ending === 's' && /^[^aeiouy]*[aeiou]$/.test(stem)) return false
  // Nor is any `rumpu` or `zubbi` known: `rumpus` and `Zubbis` end as `circus` and `tennis` do.
  if (ending === 's' && /[iu]$/.test(stem)) return false
  if (change === 'double') return /[^aeiou][aeiou][^aeiou]$/.test(stem)
  if (change === 'drop-e') return /[^aeiou][aeiou][bcdfgklmnprstvz]e$/.test(stem)
  // No word ends like the `gosl` of `gosling`.
  if (ending !== 's' && /[bcdfgkpstvz][lmnr]$/.test(stem)) return false
  // `zushed` and `zoxing` have nothing to double: `zashes` ends in -es.
  return ending === 's' || /(?:[^aeiou]|[aeiou]{2})[bcdfgklmnprstvwxz]$|[cs]h$|x$/.test(stem)
}
