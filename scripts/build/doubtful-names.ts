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

/** Names that WordNet or the list of use knows too, and that are borne in other lands for the most part. From memory, no source. */
const OF_OTHER_LANDS: ReadonlySet<string> = new Set(
  `abid aisling aislinn amar anas anders arno aryan ashok cesar concepcion eduard gaspar giuseppe gonzalo goran gunter gunther gustav hasan
  hussein kai lars maire marcello masoud mauricio milos moises muhammad noa ole paolo petro pilar prem rainer ramon rana rolando rolf
  sabir salim selma sher tula veda wei zola`.split(/\s+/),
)

/** Old forms that neither WordNet nor the list of use knows. */
const OLD_FORMS: ReadonlySet<string> = new Set(['throve'])

const LEAST_PART = 3
/** A name that films seldom say may be borne by anybody. */
const MUCH_USED = 100

const children = loadChildWords()

const everyday: ReadonlySet<string> = new Set(
  readFileSync(new URL('../../src/phonics/data/everyday-names.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => !line.startsWith('#'))
    .flatMap((line) => line.split(' ')),
)

/** @param path the rows of the first pronunciation */
type IsDoubtful = (word: string, path: readonly number[]) => boolean

export interface NameDoubts {
  readonly isDoubtful: IsDoubtful
  /** Whether a rare word is sooner a name where it has a capital, and then said otherwise: `Tope`, `Wale`. */
  readonly isNameToo: IsDoubtful
}

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
  const isMade = (word: string): boolean =>
    MADE.some(([pattern]) => pattern.test(word) && toStems(word.replace(pattern, '')).some(isForm))
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
    return (
      word.length <= MOST_LETTERS &&
      isRare &&
      !everyday.has(word) &&
      isSmall(word) &&
      endsAsName(word) &&
      !isSaidAlikeThroughout(units)
    )
  }
  const isDoubtful: IsDoubtful = (word, path) => {
    if (word.includes("'") || OLD_FORMS.has(word) || everyday.has(word) || everyday.has(word.replace(/s$/, '')))
      return false
    const tags = toTags(word)
    if (!OF_OTHER_LANDS.has(word) && isKnown(word, isFirstName(tags))) return false
    // `Watford`, `Kenyans`, `ikea`: known, and no person's name.
    if (!OF_OTHER_LANDS.has(word) && tags.length > 0 && !tags.some((tag) => /Name$|^Person$/.test(tag))) return false
    const units = path.flatMap((id) => rows[id] ?? [])
    // `Kofi`, `Rashid`: as English says it, so do most lands.
    if (!looksForeign(word) && isSaidAlikeThroughout(units)) return false
    const sounds = units.flatMap(({ phones }) => phones)
    // `Benas`: the s at the end of a name is no English plural.
    if (/[aeiou]s$/.test(word) && sounds.at(-1) === 'Z' && !BRITISH.test(word)) return true
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
