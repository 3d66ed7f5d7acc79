// What the lexicon file says of slips: the words that children's books use, and the listed words that mostly are slips of one of
// them, as `verry` and `comming`, surnames both, `goed`, `childs` and `thats`.

import { toBritish } from '../../src/phonics/british-spellings.ts'
import { findInflections } from '../../src/phonics/inflect.ts'
import { type SlipSource, writeSlips } from '../../src/phonics/lexicon/slip-words.ts'
import { toDoubles, toSwapped } from '../../src/phonics/slip-letters.ts'
import { toSkeleton } from '../../src/phonics/slip-sounds.ts'
import { toBases } from '../../src/words/inflect.ts'
import { IRREGULAR_PLURALS } from '../../src/words/irregular.ts'
import { IRREGULAR_VERBS, SECOND_FORMS } from '../../src/words/irregular-verbs.ts'
import { isLittleWord } from '../../src/words/little.ts'
import { type ChildWords, loadChildWords } from './children.ts'
import { loadEveryday, readGrownUp } from './everyday.ts'
import { frequencyRank } from './frequency.ts'
import { readUnfit } from './unfit.ts'
import type { WordNet } from './wordnet.ts'

/** A form of a children's word is proposed where the list of use has it among so many. */
const USED = 20_000
/** A word that is said aloud oftener than this is no slip, whatever WordNet lacks. */
const SELDOM = 25_000
/** Subtitles have slips too: a word that they have so many times less often than the one beside it is one of them. */
const OFTEN = 300
/** Of so many words, those that an ending makes of surnames are looked for as well. */
const MUCH_USED = 2700

/** @param words of the lexicon */
export function buildSlips(words: readonly string[], wordnet: WordNet, misspellings: Misspellings): string {
  const children = loadChildWords(loadEveryday(), readGrownUp())
  const unfit = new Set(readUnfit().flatMap(({ word, kind }) => (kind === 'fit' ? [] : [word])))
  // Of `that's` the list of use has the first part alone.
  const rank = (word: string) => frequencyRank.get(word) ?? frequencyRank.get(word.split("'")[0] ?? '') ?? Infinity
  const isUsed = (word: string) =>
    isLittleWord(word) ||
    (!unfit.has(word) &&
      (!children.isCapital(word) || children.ownGrade(word) > 1) &&
      (children.ownGrade(word) > 0 || (children.knownGrade(word) > 0 && rank(word) < USED)))
  const used = [...words.filter(isUsed), ...ALSO_USED]
  const everyday = [
    ...new Set([...used, ...used.flatMap((word) => toBritish(word) ?? []), ...listContractions(words)]),
  ].sort((x, y) => rank(x) - rank(y) || (x < y ? -1 : 1))
  return writeSlips({ everyday, ...findListedSlips(words, everyday, wordnet, children, misspellings) }, toSkeleton)
}

/** What was written, and what was meant by it. */
export type Misspellings = ReadonlyMap<string, string>

/** @param table the rows of misspellings.tsv */
export const readMisspellings = (table: string): Misspellings =>
  new Map(
    table
      .trimEnd()
      .split('\n')
      .filter((row) => !row.startsWith('#'))
      .map((row): [string, string] => {
        const [word = '', meant = ''] = row.split('\t')
        return [word, meant]
      }),
  )

/** Words that nobody would propose for a story, and that somebody misspells all the same or that are no slips; and those of England's curriculum that the lists of children's words lack. */
const ALSO_USED = 'beer death definitely die grammar neighbour shoot usually war whirr'.split(' ')

/** Shortened words, but for those in 's, which any word can have. */
const CONTRACTED =
  /^(?:\w+n't|(?:he|i|it|she|that|there|they|we|who|you)'(?:d|ll)|(?:i|they|we|you|could|should|would|might|must)'ve|(?:they|we|you)'re|i'm|o'clock)$/
const WITH_S = 'he here how it let she that there what when where who why'.split(' ')

const listContractions = (words: readonly string[]): readonly string[] => [
  ...words.filter((word) => CONTRACTED.test(word)),
  ...WITH_S.map((word) => `${word}'s`),
]

/** Words of their own without the apostrophe of another. `cant` and `wont` are words too, which no child's book has. */
const OWN = new Set('hell ill its lets shed shell wed well were whore id'.split(' '))

function findListedSlips(
  words: readonly string[],
  everyday: readonly string[],
  wordnet: WordNet,
  children: ChildWords,
  misspellings: Misspellings,
): Pick<SlipSource, 'slips' | 'names'> {
  const slips = new Map<string, string>()
  const isEveryday = new Set(everyday)
  const add = (word: string, meant: string) => {
    if (word !== meant && !isEveryday.has(word) && !slips.has(word)) slips.set(word, meant)
  }
  for (const word of everyday) {
    const bare = word.replace("'", '')
    if (bare !== word && !OWN.has(bare)) add(bare, word)
  }
  const listed = new Set(words)
  for (const [word, meant] of [...misspellings, ...listWrongForms(wordnet)]) add(word, meant)
  const british = new Set(words.flatMap((word) => toBritish(word) ?? []))
  const names = new Set<string>(
    [...misspellings].flatMap(([word, meant]) =>
      listed.has(word) && !meant.includes("'") && !NO_NAMES.has(word) ? [word] : [],
    ),
  )
  const isRight = (word: string, meant: string) => isOwnWord(word, meant, wordnet, children)
  // An ending makes `comming` of a surname that is no word, and `caried` of another.
  for (const word of everyday.slice(0, MUCH_USED)) {
    const near = toNear(word).filter((one) => one.length > 3 && !listed.has(one) && !isEveryday.has(one))
    for (const one of near) {
      if (slips.has(one) || british.has(one) || !isMade(one, listed) || isRight(one, word)) continue
      add(one, word)
      names.add(one)
    }
  }
  for (const word of words) {
    if (word.length < 4 || word.includes("'") || isEveryday.has(word) || slips.has(word) || british.has(word)) continue
    const found = toNear(word).find((one) => one !== word && isEveryday.has(one))
    if (found === undefined || isRight(word, found)) continue
    add(word, found)
    names.add(word)
  }
  return { slips, names }
}

const toNear = (word: string): readonly string[] => [
  ...toSwapped(word),
  ...[...word].flatMap((_, at) => toDoubles(word, at)),
]

const isMade = (word: string, listed: ReadonlySet<string>): boolean =>
  findInflections(word).some(({ stem }) => listed.has(stem))

/** Whether WordNet has it, or films say it, or it is an ordinary form of such a word. */
function isOwnWord(word: string, meant: string, wordnet: WordNet, children: ChildWords): boolean {
  const isKnown = (one: string) =>
    isLittleWord(one) || wordnet.senses(one).some(({ pos, offset }) => wordnet.synset(pos, offset).words.includes(one))
  const isSaid =
    (frequencyRank.get(word) ?? Infinity) < SELDOM &&
    !children.isCapital(word) &&
    children.count(word) * OFTEN > children.count(meant)
  return isSaid || RIGHT.includes(word) || isKnown(word) || toBases(word).some(({ base }) => isKnown(base))
}

/** Their regular forms are right too, of them or of another word: `lied`, `winded`, `persons`. Common dictionary knowledge, no source. */
const ALSO_REGULAR = new Set(
  (
    'awake bend bet burst cost die dwarf fish hang hoof kneel lead leave lie light person put quit ring scarf shine speed spit ' +
    'string strive tear wet wind wolf'
  ).split(' '),
)

/** Words of picture books and of the kitchen that WordNet lacks. */
const RIGHT = ['boing', 'carb', 'whoo']

/** Misspellings that the dictionary has, and nobody is called. */
const NO_NAMES = new Set('coz cuz nite thru'.split(' '))

/** `goed`, `runned`, `childs`, `childrens`: irregular words with the endings of others. */
function listWrongForms(wordnet: WordNet): readonly (readonly [word: string, meant: string])[] {
  const seconds = new Set<string>(SECOND_FORMS.map(([base]) => base))
  const isOnlyIrregular = (base: string) => !seconds.has(base) && !ALSO_REGULAR.has(base)
  const pasts = IRREGULAR_VERBS.filter(([base, past]) => isOnlyIrregular(base) && !/ed$/.test(past))
  const plurals = IRREGULAR_PLURALS.filter(([base, plural]) => isOnlyIrregular(base) && plural !== `${base}s`)
  return [
    ...pasts.flatMap(([base, past]) => toRegularPasts(base, wordnet).map((wrong) => [wrong, past] as const)),
    ...plurals.flatMap(([base, plural]) => [
      [/(?:s|x|sh|ch)$/.test(base) ? `${base}es` : `${base}s`, plural] as const,
      ...(/(?:men|ren|eese|ice|feet|teeth)$/.test(plural) ? [[`${plural}s`, plural] as const] : []),
    ]),
  ]
}

/** With the doubling that the rule asks for, and without: `runned` and `runed`. */
function toRegularPasts(base: string, wordnet: WordNet): readonly string[] {
  if (base.endsWith('e')) return [`${base}d`]
  if (/[^aeiou]y$/.test(base)) return [`${base.slice(0, -1)}ied`]
  const isDoubled = /[^aeiou][aeiou][bdgklmnprt]$/.test(base)
  // `sited` is of `site`.
  const single = wordnet.isLemma(`${base}e`) ? [] : [`${base}ed`]
  return isDoubled ? [`${base}${base.at(-1)}ed`, ...single] : single
}
