// Whether a word is a form of a word that children know, and whether anybody makes that form at all.

import type { PartOfSpeech } from '../../src/words/facts.ts'
import { type Base, type Inflection, toBases } from '../../src/words/inflect.ts'
import { isLittleWord, LITTLE_WORDS } from '../../src/words/little.ts'
import type { ChildWords, KnownGrade } from './children.ts'
import { findUses, type Use } from './word-class.ts'
import type { WordSources } from './word-facts.ts'

/** A form that is not the main use is one from this share of it, and from so many tags: `browning` is no form of brown. */
const LEAST_FORM = { share: 0.1, weight: 0.3 }

/** A form met less often than this for each use of its base is hardly known: `stayer`, `bester`. */
const LEAST_MET = 5e-4

/** Whoever does it (`hugger`) is known as well as the deed only among so many most used words. */
const MOST_USED_DOER = 12_000

/** How well children know a word: by itself, or as a form of a base that they know. */
export function findKnown(word: string, uses: readonly Use[], sources: WordSources): KnownGrade {
  const { children } = sources
  const grades = toBases(word)
    .filter((one) => one.base !== word && isForm(word, one, uses, sources))
    .map((one) => Math.min(children.ownGrade(one.base), toMostKnown(word, one, sources)))
  return Math.max(children.ownGrade(word), ...grades) as KnownGrade
}

/** How well a form can be known that is so much rarer than its base. One that nobody met may still be made: `muddier`. */
function toMostKnown(word: string, { base, inflection }: Base, { children, wordnet }: WordSources): KnownGrade {
  const share = toShare(word, base, children)
  // `hugger`, `crier`: anybody can make one of any deed.
  if (inflection === 'comparative' && wordnet.isNoun(word) && (children.rank(word) ?? Infinity) > MOST_USED_DOER)
    return 0
  if (share > 0) return share < LEAST_MET ? 1 : 3
  const [main] = findUses(base, wordnet, children)
  return main?.inflection === 'none' && main.part === PART_OF[inflection] ? 1 : 0
}

const PART_OF: Readonly<Record<Inflection, PartOfSpeech | undefined>> = {
  none: undefined,
  plural: 'noun',
  third: 'verb',
  past: 'verb',
  participle: 'verb',
  ing: 'verb',
  comparative: 'adjective',
  superlative: 'adjective',
}

/** How often the word is met for each time that its base is. */
const toShare = (word: string, base: string, children: ChildWords): number =>
  children.count(word) / Math.max(1, children.count(base))

// A form by its ending; or whoever does it and what is done, which WordNet has as nouns: `jumper`, `skating`. The table of
// endings has -er for `bigger` only.
function isForm(
  word: string,
  { base, inflection }: Base,
  uses: readonly Use[],
  { children, wordnet }: WordSources,
): boolean {
  const use = uses.find((one) => one.base === base && one.inflection === inflection)
  const [main] = uses
  if (use !== undefined && use === main) return true
  // `browning`, `booker`: what is written with a capital is met as a name.
  if (children.isCapital(word)) return false
  const isMet = use !== undefined && use.weight >= LEAST_FORM.weight
  if (isMet && use.weight >= LEAST_FORM.share * (main?.weight ?? 0)) return true
  if (!wordnet.isNoun(word) || !wordnet.isVerb(base)) return false
  if (inflection === 'ing') return wordnet.derives(word, base)
  return inflection === 'comparative' && (wordnet.derives(word, base) || wordnet.lexFile(word) === 'person')
}

/** Shares of use from which a plural is one: of a word that is mainly a noun; of one that is so too; of any. */
const PLURAL_OF_NOUN = 3e-3
const PLURAL_OF_OTHER = { share: 5e-3, weight: 0.2 }
const PLURAL_OF_ANY = 0.015
/** And so many uses are enough for a word that is mainly a noun. */
const ENOUGH = 100

/** A verb that is not the main use must have been met so often for its -s. Tags of WordNet. */
const LEAST_VERB = 2

/**
 * Whether people put this -s on this word. Not on stuff (`muds`), nor on what is no noun (`ares`), nor on one whose plural
 * is another (`mans`, `mens`).
 */
export function isMade(word: string, uses: readonly Use[], sources: WordSources): boolean {
  const { children, wordnet } = sources
  const isS = (inflection: string | undefined): boolean => inflection === 'plural' || inflection === 'third'
  if (!word.endsWith('s') || children.ownGrade(word) >= 2 || !isS(uses[0]?.inflection)) return true
  if (wordnet.senses(word).some(({ pos, offset }) => wordnet.synset(pos, offset).words.includes(word))) return true
  return toBases(word)
    .filter(({ base, inflection }) => base !== word && isS(inflection))
    .some((one) => isMadeFrom(word, one, sources))
}

function isMadeFrom(word: string, { base, inflection }: Base, { children, wordnet, showable }: WordSources): boolean {
  const uses = findUses(base, wordnet, children)
  const [main] = uses
  // A name to the frequency list: `fang`.
  if (main === undefined) return true
  const share = toShare(word, base, children)
  if (isNumber(base)) return share >= PLURAL_OF_NOUN
  const use = uses.find(({ part }) => part === PART_OF[inflection])
  if (use === undefined && inflection === 'plural' && wordnet.isNoun(base) && !isLittleWord(base))
    return share >= PLURAL_OF_ANY
  if (use === undefined || main.inflection === 'plural') return false
  if (inflection === 'third') return use === main || use.weight >= LEAST_VERB
  if (share >= PLURAL_OF_ANY || showable.isThing(base)) return true
  if (use === main) return share >= PLURAL_OF_NOUN || children.count(word) >= ENOUGH
  return share >= PLURAL_OF_OTHER.share && use.weight >= PLURAL_OF_OTHER.weight * main.weight
}

const isNumber = (word: string): boolean => LITTLE_WORDS.some(([little, kind]) => little === word && kind === 'number')
