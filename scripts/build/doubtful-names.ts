// Which entries of the dictionary are names that it says the American way and whose bearers may say otherwise: `Ines`, `Tariq`.
// Such a name is told as unsure. The dictionary holds sixty thousand names of the American directories, and marks none.

import { readFileSync } from 'node:fs'
import nlp from 'compromise'
import { createPlainReader } from '../../src/phonics/guess/plain.ts'
import { endsOpen, isEnglishHabit, isSaidAlikeThroughout, looksForeign } from '../../src/phonics/guess/world.ts'
import { toRowSet } from '../../src/phonics/lattice.ts'
import type { Row } from '../../src/phonics/rows.ts'
import { toBases } from '../../src/words/inflect.ts'
import { isLittleWord } from '../../src/words/little.ts'
import { loadChildWords } from './children.ts'
import { frequencyRank } from './frequency.ts'
import type { WordNet } from './wordnet.ts'

/** How English makes words of words, each with one that neither WordNet nor the list of use knows. */
const MADE: readonly (readonly [pattern: RegExp, example: string])[] = [
  [/^(?:anti|dis|mis|non|over|out|pre|re|self|semi|sub|super|under|un)(?=.{3})/, 'undrinkable'],
  [/(?:able|er|ers|ful|ish|ism|ist|less|ly|man|men|ment|ness|or|ors|ship|women|woman)$/, 'natively'],
]

/** Names of the English, Scots and Irish of old, said by everybody as they look. */
const BRITISH =
  /^ma?c(?=[^aeiou])|^kirk|(?:bridge|brook|burn|by|field|ford|ham|house|land|ley|man|smith|son|stone|ton|well|wood|worth)s?$/

/**
 * Names that WordNet or the list of use knows too, and that are borne in other lands for the most part. From memory, no source.
 * None of them stands among the names of every day, nor is any said by its letters as most lands say them: such a row would do nothing.
 */
export const OF_OTHER_LANDS: ReadonlySet<string> = new Set(
  `abid aisling aislinn anas anders ashok aud cesar chisom concepcion dulce eduard gaspar giuseppe gonzalo grete
  gunter gunther gustav hasan jerzy lars maire marcello masoud matyas mauricio moises ole pilar rainer rana roque
  sabir salim sher timur ung`.split(/\s+/),
)

/** Old forms that neither WordNet nor the list of use knows. */
const OLD_FORMS: ReadonlySet<string> = new Set(['throve'])

const LEAST_PART = 3
/** A name that films seldom say may be borne by anybody. */
const MUCH_USED = 100

const children = loadChildWords()

export const everyday: ReadonlySet<string> = new Set(
  readFileSync(new URL('../../src/phonics/data/everyday-names.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .flatMap((line) => line.split(' ')),
)

/** @param path the rows of the first pronunciation */
type IsDoubtful = (word: string, path: readonly number[]) => boolean

export interface NameDoubts {
  readonly isDoubtful: IsDoubtful
  /** Whether a rare word is sooner a name where it has a capital, and then said otherwise: `Tope`, `Wale`. */
  readonly isNameToo: IsDoubtful
}

/** A name that films say less often is nobody's whom all know. */
const FEW = 10
/** So far down the list of use no word is met often enough to be taken for itself. */
const RARE = 25_000
const MOST_LETTERS = 5

export function createNameDoubts(wordnet: WordNet, rows: readonly Row[]): NameDoubts {
  const plain = createPlainReader(toRowSet(rows))
  const isSmall = (word: string): boolean =>
    wordnet.senses(word).some((sense) => wordnet.synset(sense.pos, sense.offset).words.includes(word)) ||
    (children.count(word) > 0 && !children.isCapital(word))
  const isForm = (word: string): boolean => [word, ...toBases(word).map(({ base }) => base)].some(isSmall)
  const isKnown = (word: string, isFirst: boolean): boolean =>
    isNamed(word) ||
    children.count(word) >= (isFirst && children.isCapital(word) ? MUCH_USED : 1) ||
    isForm(word) ||
    isMade(word) ||
    isPutTogether(word)
  /** Names of places, peoples and great men are said as the dictionary says them, whoever lives there. */
  const isNamed = (word: string): boolean =>
    wordnet.senses(word).some(({ pos, offset }) => !isGenus(wordnet.synset(pos, offset).words))
  /** The banana is a `Musa` to those who write books on plants, and to nobody else. */
  const isGenus = (words: readonly string[]): boolean => words.some((one) => one.startsWith('genus_'))
  // `Libor` is nobody who libs.
  const isMade = (word: string): boolean =>
    MADE.some(([pattern]) => {
      const stem = word.replace(pattern, '')
      return pattern.test(word) && (stem.length > LEAST_PART || !/ors?$/.test(word)) && toStems(stem).some(isForm)
    })
  const isPutTogether = (word: string): boolean =>
    [...word].some(
      (_, at) =>
        at >= LEAST_PART && word.length - at >= LEAST_PART && isPart(word.slice(0, at)) && isPart(word.slice(at)),
    )
  // `underpass`, but not `theodor`.
  const isPart = (part: string): boolean => isForm(part) && (part.length > LEAST_PART || !isLittleWord(part))
  const isPlain = (word: string, sounds: readonly string[]): boolean =>
    plain.read(word).some(({ path }) => toLoose(path.flatMap((id) => rows[id]?.phones ?? [])) === toLoose(sounds))
  const isNameToo: IsDoubtful = (word, path) => {
    const isRare = (frequencyRank.get(word) ?? Infinity) > RARE && children.knownGrade(word) === 0
    const units = path.flatMap((id) => rows[id] ?? [])
    if (!isRare || everyday.has(word) || isSaidAlikeThroughout(units)) return false
    return isSmall(word) ? word.length <= MOST_LETTERS && endsAsName(word) : isRareName(word)
  }
  /** `Beata`, `Moise`: met a few times, and with a capital. `Vikings` are several of a people. */
  const isRareName = (word: string): boolean =>
    children.isCapital(word) &&
    children.count(word) < FEW &&
    (endsOpen(word) || looksForeign(word)) &&
    !BRITISH.test(word) &&
    !isForm(word) &&
    !isPutTogether(word) &&
    !isPeople(word)
  const isPeople = (word: string): boolean => isNamed(word) || isNamed(word.replace(/s$/, ''))
  /** `Benas`, `Nicklas`: the s at the end of a name is no English plural, though `nick` and `las` are words. */
  const isNoPlural = (word: string, sounds: readonly string[]): boolean =>
    /[aeiou]s$/.test(word) && sounds.at(-1) === 'Z' && !BRITISH.test(word)
  const isDoubtful: IsDoubtful = (word, path) => {
    if (word.includes("'") || OLD_FORMS.has(word) || everyday.has(word) || everyday.has(word.replace(/s$/, '')))
      return false
    const tags = toTags(word)
    const units = path.flatMap((id) => rows[id] ?? [])
    const sounds = units.flatMap(({ phones }) => phones)
    const isNobodys = children.count(word) === 0 && !isForm(word) && !isPeople(word)
    if (isNobodys && tags.length === 0 && /[^aeiou][aou]s$/.test(word) && isNoPlural(word, sounds)) return true
    if (!OF_OTHER_LANDS.has(word) && isKnown(word, isFirstName(tags))) return false
    // `Watford`, `Kenyans`, `ikea`: known, and no person's name.
    if (!OF_OTHER_LANDS.has(word) && tags.length > 0 && !tags.some((tag) => /Name$|^Person$/.test(tag))) return false
    // `Kofi`, `Rashid`: as English says it, so do most lands.
    if (!looksForeign(word) && isSaidAlikeThroughout(units)) return false
    if (isNoPlural(word, sounds)) return true
    if (OF_OTHER_LANDS.has(word) || isFirstName(tags) || endsAsName(word)) return true
    return !BRITISH.test(word) && (!isPlain(word, sounds) || isEnglishHabit(units))
  }
  return { isDoubtful, isNameToo }
}

/** As `Lina` and `Tine` do. */
const endsAsName = (word: string): boolean => endsOpen(word) || /[^aeiou]i?e$/.test(word)

/** `use` and `us` of `us`·able; `happy` of `happi`·ness. */
const toStems = (stem: string): readonly string[] => [stem, `${stem}e`, stem.replace(/i$/, 'y')]

const isFirstName = (tags: readonly string[]): boolean => tags.some((tag) => /^(?:First|Female|Male)Name$/.test(tag))

/** What npm `compromise` takes a word for: `FirstName`, `City`; none for a word that it does not list. */
const toTags = (word: string): readonly string[] => [(nlp.model() as CompromiseModel).one.lexicon[word] ?? []].flat()

interface CompromiseModel {
  readonly one: { readonly lexicon: Readonly<Record<string, string | readonly string[]>> }
}

const toLoose = (sounds: readonly string[]): string =>
  sounds.map((sound) => (/^(?:IH|EH|AE)$/.test(sound) ? 'AH' : sound === 'AO' ? 'AA' : sound)).join(' ')
