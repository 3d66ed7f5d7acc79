// Tells which words of the dictionary are a stem with an ending, so that the file holds the stem once.

import type { Transcription } from '../../src/phonics/arpabet.ts'
import { CHANGES, ENDINGS, findInflections, type Inflection, inflect } from '../../src/phonics/inflect.ts'
import type { LexiconEntry } from '../../src/phonics/lexicon/encode.ts'
import { type RawPronunciation, toRawPronunciation } from '../../src/phonics/raw.ts'
import type { readRows } from '../../src/phonics/rows.ts'
import { isLittleWord } from '../../src/words/little.ts'
import { loadChildWords } from './children.ts'
import { frequencyRank } from './frequency.ts'
import type { WordNet } from './wordnet.ts'

const CHILDREN = loadChildWords()

/** A transcription with the rows that say it. */
export interface Aligned extends Transcription {
  readonly path: readonly number[]
  readonly cost: number
}

/** A word with the transcriptions that a careful reader says. */
export interface Careful {
  readonly word: string
  readonly pronunciations: readonly Aligned[]
}

interface StoredWord {
  readonly raws: readonly RawPronunciation[]
  readonly found: Found | undefined
}

type Found = { readonly inflection: Inflection; readonly mask: number }

/** The words as the file holds them: as a stem with an ending where the word is one, else with their own paths. */
export function toEntries(
  careful: readonly Careful[],
  rows: ReturnType<typeof readRows>,
  wordnet: WordNet,
  fixed: ReadonlySet<string>,
): LexiconEntry[] {
  const byWord = new Map(careful.map((one) => [one.word, one]))
  const stored = new Map<string, StoredWord>()
  // A stem may itself be a stem with an ending (`teachers`): its pronunciations are those that the file will give.
  const store = (word: string): StoredWord => {
    let known = stored.get(word)
    if (!known) {
      const pronunciations = byWord.get(word)?.pronunciations ?? []
      const ending = findTrueEnding(word, pronunciations, byWord, (stem) => store(stem).raws, wordnet)
      const inflected = ending ? toInflected(ending, store(ending.inflection.stem).raws) : []
      // The spoken forms of a heteronym keep their order, and none is lost: `used`, `winds`; not `does`, also of a doe.
      const found = fixed.has(word) && !isSame(inflected, pronunciations) ? undefined : ending
      const raws = found ? inflected : pronunciations.map(({ path, stress }) => toRawPronunciation(path, rows, stress))
      known = { raws, found }
      stored.set(word, known)
    }
    return known
  }
  return (
    careful
      // The owner's 's follows from the word that it stands on.
      .filter(({ word }) => !word.endsWith("'s") || !byWord.has(word.slice(0, -2)) || fixed.has(word))
      .map(({ word, pronunciations }): LexiconEntry => {
        const { found } = store(word)
        if (!found)
          return {
            word,
            pronunciations: pronunciations.map(({ path, stress }) => ({ path, stress: toPattern(stress) })),
          }
        return {
          word,
          ending: ENDINGS.indexOf(found.inflection.ending),
          change: CHANGES.indexOf(found.inflection.change),
          mask: found.mask,
        }
      })
  )
}

const toInflected = ({ inflection, mask }: Found, stems: readonly RawPronunciation[]): readonly RawPronunciation[] =>
  stems.filter((_, k) => (mask >> k) & 1).flatMap((raw) => inflect(raw, inflection.stem.length, inflection) ?? [])

const isSame = (inflected: readonly RawPronunciation[], pronunciations: readonly Aligned[]): boolean =>
  inflected.length === pronunciations.length &&
  inflected.every((raw, k) => {
    const sounds = raw.units.flatMap((unit) => unit.phones)
    return toLoose(sounds) === toLoose(pronunciations[k]?.phones ?? [])
  })

/** Second stress is left out of words of seven syllables and more, so that every pattern has a number of one byte. */
const toPattern = (stress: readonly number[]): string =>
  stress.map((mark) => (stress.length >= 7 && mark === 2 ? 0 : mark)).join('')

/** An ending is true where the word is said as its stem with the ending's sound, and the stem is a word that takes it. */
function findTrueEnding(
  word: string,
  pronunciations: readonly Aligned[],
  byWord: ReadonlyMap<string, Careful>,
  toRaws: (word: string) => readonly RawPronunciation[],
  wordnet: WordNet,
): Found | undefined {
  const said = findInflections(word).flatMap((inflection): readonly Found[] => {
    if (!byWord.has(inflection.stem)) return []
    let mask = 0
    toRaws(inflection.stem).forEach((raw, k) => {
      const sounds = inflect(raw, inflection.stem.length, inflection)?.units.flatMap((unit) => unit.phones)
      if (sounds && pronunciations.some((pronunciation) => toLoose(pronunciation.phones) === toLoose(sounds)))
        mask |= 1 << k
    })
    return mask > 0 ? [{ inflection, mask }] : []
  })
  const sure = said.filter(({ inflection }) => takesEnding(word, inflection, wordnet))
  const [first] = sure
  const doubled = sure.find(({ inflection }) => inflection.change === 'double')
  // Who bussed went by bus sooner than that anybody was kissed.
  if (first !== undefined && doubled !== undefined && toRank(doubled) < toRank(first)) return doubled
  return first ?? said.find(({ inflection }) => isMadeOfThing(word, inflection, wordnet))
}

const toRank = ({ inflection }: Found): number => frequencyRank.get(inflection.stem) ?? Number.POSITIVE_INFINITY

/** `texted` and `prepping` are of things that were no deeds when WordNet was made; who is `talented` or `long-legged` has such a thing. */
function isMadeOfThing(word: string, { stem, ending }: Inflection, wordnet: WordNet): boolean {
  if (!/^(?:ed|ing)$/.test(ending) || !wordnet.isNoun(stem) || wordnet.isName(stem)) return false
  const isLike = ending === 'ed' && wordnet.isAdjective(word) && !wordnet.isVerb(word) && !wordnet.isNoun(word)
  return isLike || isUnheardOf(word, wordnet)
}

/** Sounds without what the dictionary is of two minds about: AH or IH, AH L or L, AO or AA, the beginnings re-, ad- and en- (`enclosing` beside `enclose`). */
const toLoose = (phones: readonly string[]): string =>
  phones
    .join(' ')
    // First, or the L of `rely` would swallow the vowel of the one and not of the other.
    .replace(/^([BDR] |P R )IY\b/, '$1IH')
    .replace(/\bAH\b/g, 'IH')
    .replace(/IH L/g, 'L')
    .replace(/\bAO\b/g, 'AA')
    .replace(/^AE (?=D )/, 'IH ')
    .replace(/^EH (?=[KMN] )/, 'IH ')

/** Whether the stem is a word that takes the ending, by WordNet: `summer` is not `sum` + er, `morning` not `morn` + ing. */
function takesEnding(word: string, { stem, ending }: Inflection, wordnet: WordNet): boolean {
  switch (ending) {
    case 's':
    case 'es':
      // `was` is not WA (the state) + s, nor `its` a form of `it`: little words have no plural.
      if (isDeed(stem, wordnet)) return true
      return (wordnet.isNoun(stem) || wordnet.isVerb(stem)) && !wordnet.isName(stem) && !isLittleWord(word)
    case 'ed':
      // `seed` is no form of `see`, nor `flatter` of `flat`: they are verbs of their own.
      return wordnet.isVerb(stem) && !wordnet.isVerb(word)
    case 'ing':
      return wordnet.isVerb(stem)
    case 'er':
    case 'est':
      return takesCompared(word, stem, wordnet) || (ending === 'er' && isDoer(word, stem, wordnet))
    default:
      return true
  }
}

/** `droppings`: what is done, more than once. */
const isDeed = (word: string, wordnet: WordNet): boolean =>
  findInflections(word).some(({ ending, stem }) => ending === 'ing' && stem.length > 2 && wordnet.isVerb(stem))

/** WordNet has them as a deed or a thing too, and in a child's book they are what is more so. */
const COMPARED: ReadonlySet<string> = new Set(['flatter', 'lighter', 'lower', 'madder', 'slicker'])

/** `fresher` and `grandest`, though a fresher is a student too; not `after`, `letter` or `flatter`. */
function takesCompared(word: string, stem: string, wordnet: WordNet): boolean {
  if (COMPARED_ADVERBS.has(stem)) return true
  if (!wordnet.isAdjective(stem)) return false
  if (COMPARED.has(word)) return true
  if (wordnet.isVerb(word) || isLittleWord(word)) return false
  return !wordnet.isNoun(word) || wordnet.posOf(word).noun.tags === 0
}

/** What can do something besides people; `supper` is food, whatever it is to sup. */
const DOERS: ReadonlySet<string> = new Set(['animal', 'artifact'])

/** They do not what their letters say: a badger has no badge, a barber cuts beards, and nobody sups a supper. */
const NO_DOERS: ReadonlySet<string> = new Set(['badger', 'barber', 'liver', 'rafter', 'supper'])

/** What people do often or soon, they do oftener and sooner. */
const COMPARED_ADVERBS: ReadonlySet<string> = new Set(['often', 'soon'])

/** In use, and no name, but not in WordNet. */
const isUnheardOf = (word: string, wordnet: WordNet): boolean =>
  !wordnet.isLemma(word) && frequencyRank.has(word) && !CHILDREN.isCapital(word)

/** Someone or something that does what the stem says: `hunter`, `buzzer`. */
function isDoer(word: string, stem: string, wordnet: WordNet): boolean {
  if (NO_DOERS.has(word)) return false
  const kind = wordnet.lexFile(word) ?? ''
  if (kind === 'person') return wordnet.isVerb(stem) || (wordnet.isAdjective(stem) && wordnet.derives(word, stem))
  // A dangler: behind a verb in -le there is nothing else that -ler could be.
  if (/[^aeiou]le$/.test(stem) && wordnet.isVerb(stem)) return true
  // A banger is food, a climber a plant and a mixer a group; a clicker is nothing that WordNet knows. Butter is a deed of its own.
  if (wordnet.isVerb(stem) && !wordnet.isVerb(word) && (wordnet.derives(word, stem) || isUnheardOf(word, wordnet)))
    return true
  return DOERS.has(kind) && (wordnet.isVerb(stem) || wordnet.isAdjective(stem)) && wordnet.mainlyDerives(word, stem)
}
