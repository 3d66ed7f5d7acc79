// Measures which spellings of a sound English ordinarily uses: the share of each sound among all the times that its letters
// are written, over the dictionary's words in use. What is rarer is an exception: the `o` of `won`, the `ai` of `said`.

import type { Lexicon } from '../../src/phonics/lexicon/open.ts'
import {
  INSIDE,
  isOrdinaryThere,
  type OrdinarySpelling,
  toExcepted,
  writeOrdinary,
} from '../../src/phonics/ordinary.ts'
import { createPhonics } from '../../src/phonics/phonics.ts'
import { createSpelling } from '../../src/phonics/spelling.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { collect, countFamilies, toGroups, toLetters, type Use } from './letter-uses.ts'
import { CHILDREN, createExamples, type Examples, LEAST_GRADE } from './shown-examples.ts'

/** Of all the times that the letters are written; `i` as in `find` has 8 %, `o` as in `won` 4 %. */
const LEAST_SHARE = 0.06
/** Of the times that they are written between the same neighbours: `n` before `k`, `y` at the start. */
const LEAST_SHARE_THERE = 0.5
/** And of the word families in which they are written; `o_e` has 7 % as in `some` and 6 % as in `move`. */
const LEAST_FAMILY_SHARE = 0.08
/**
 * Or of the families of words on the lists for the primary grades, where few words in all have the letters in so many
 * ways: `o` as in `son` has 14 % of them, `ou` as in `young` 15 %, `x` as in `exam` 11 %, `ough` as in `rough` 20 %; but `u` as in `put` 7 %.
 */
const LEAST_CHILD_SHARE = 0.1
const LEAST_CHILD_FAMILIES = 2
/** Letters of fewer families have no share to speak of: `could`, `would` and `should` are all that `oul` is written in. */
const LEAST_LETTER_FAMILIES = 10
/**
 * After a letter where no sound has more of the families, a rare sound is no rule: after `w` the `o` says six things, `won`, `woke`,
 * `wolf`, `wobble`, `women` and `womb`, and the commonest of them has 29 %, 40 % in Britain.
 */
const MOST_SHARE_UNRULY = 0.4
/** The same of a sound that the built-in sequences teach for the letters: `o` as in `mother`, `a` as in `ball`. */
const LEAST_TAUGHT_SHARE_THERE = 0.25
/** Of the words that small children know: `money`, `month` and `monkey` against `monster`, not `monsieur` and `Montana`. */
const LEAST_SHARE_TO_CHILDREN = 0.5
/** Of word families, so that `could`, `would` and `should` make no rule. */
const LEAST_FAMILIES = 4
/** A taught sound that most words have before these letters wants fewer, one that few have wants more. */
const LEAST_FAMILIES_TAUGHT = 3
const MANY_FAMILIES = 6
/** Places that have so many of a sound's families are no rule of places: what is left (`statue` beside `nature`) is said as the rest is. */
const MOST_SHARE_OF_SOUND = 0.86
/** And where they have fewer, the rule is not of those places: `individual` beside `education`. */
const LEAST_SHARE_OF_SOUND = 0.5

const ACCENTS: readonly Accent[] = ['general-american', 'southern-british']

/** The tables of both accents, as the lexicon file holds them. */
export function measureBoth(lexicon: Lexicon, rows: readonly { letters: string; example: string }[]): string {
  const toExamples = createExamples(rows)
  const spelling = createSpelling(lexicon)
  return ACCENTS.map((accent) => {
    const phonics = createPhonics(lexicon, accent, spelling)
    return [accent, writeOrdinary(measureOrdinary(phonics, toExamples(phonics)))].join('\n')
  }).join('\n\n')
}

function measureOrdinary(phonics: Phonics, examples: Examples): readonly OrdinarySpelling[] {
  const byLetters = toGroups(collect(phonics), ({ unit }) => toLetters(unit))
  const found = [...byLetters].flatMap(([letters, uses]) =>
    [...toGroups(uses, ({ unit }) => unit.key)].flatMap(([key, said]): OrdinarySpelling[] => {
      const places = findOrdinaryPlaces(key, said, uses, examples.isTaught(key, letters))
      const example = places && findExample(key, letters, said, places, examples)
      return example === undefined ? [] : [{ key, example, places: places ?? [] }]
    }),
  )
  return [...found, ...findSilentE(byLetters, found, examples)]
}

function findExample(
  key: string,
  letters: string,
  said: readonly Use[],
  places: readonly string[],
  examples: Examples,
): string | undefined {
  const words = said.map(({ word }) => word)
  if (places.length === 0) return examples.find(key, letters, words)
  // A word that is itself told as an exception is a poor example: the ar of `quarter` is none of w.
  const ordinary = new Set(said.filter((use) => isOrdinaryThere(places, use.places)).map(({ word }) => word))
  return examples.find(key, letters, words, (word) => ordinary.has(word))
}

/** Empty for everywhere, undefined for nowhere. A silent letter is ordinary in its places only. */
function findOrdinaryPlaces(
  key: string,
  said: readonly Use[],
  uses: readonly Use[],
  isTaught: boolean,
): readonly string[] | undefined {
  const families = countFamilies(said)
  const isSilent = key.endsWith('=')
  // A worn-down vowel is no rule: the u_e of `minute`.
  const isFull = !isSilent && !key.endsWith('=ə')
  if (isFull && isKnownToChildren(families, said, uses)) return findUnrulyPlaces(said, uses)
  if (families < LEAST_FAMILIES) return undefined
  const isEverywhere = !isSilent && isOften(said, uses)
  if (isEverywhere) return []
  // At its end a word has letters of its own: the y of `gym` is measured against those of `type` and `flying`, not of `happy`.
  const inside = uses.filter((use) => use.places.includes(INSIDE))
  if (
    isFull &&
    isOften(
      said.filter((use) => use.places.includes(INSIDE)),
      inside,
    )
  )
    return [INSIDE]
  const places = findPlaces(said, uses, isTaught)
  if (places.length === 0) return undefined
  if (isSilent) return places
  const share = countFamilies(said.filter((use) => isOrdinaryThere(places, use.places))) / families
  if (share >= MOST_SHARE_OF_SOUND) return []
  return share < LEAST_SHARE_OF_SOUND ? undefined : places
}

const isOften = (said: readonly Use[], uses: readonly Use[]): boolean =>
  said.length / uses.length >= LEAST_SHARE && countFamilies(said) / countFamilies(uses) >= LEAST_FAMILY_SHARE

export const isChildWord = ({ word }: Use): boolean => CHILDREN.ownGrade(word) >= LEAST_GRADE

function isKnownToChildren(families: number, said: readonly Use[], uses: readonly Use[]): boolean {
  if (families < LEAST_FAMILIES_TAUGHT || countFamilies(uses) < LEAST_LETTER_FAMILIES) return false
  const known = countFamilies(said.filter(isChildWord))
  return known >= LEAST_CHILD_FAMILIES && known / countFamilies(uses.filter(isChildWord)) >= LEAST_CHILD_SHARE
}

/** Empty for a sound that much of the language has. */
function findUnrulyPlaces(said: readonly Use[], uses: readonly Use[]): readonly string[] {
  if (countFamilies(said) / countFamilies(uses) >= LEAST_CHILD_SHARE) return []
  const after = new Set(said.flatMap(({ places }) => places.slice(0, 1)))
  return [...after]
    .filter((place) => isUnruly(uses.filter(({ places }) => places.includes(place))))
    .map(toExcepted)
    .sort()
}

function isUnruly(uses: readonly Use[]): boolean {
  const families = countFamilies(uses)
  if (families < LEAST_LETTER_FAMILIES) return false
  const byKey = toGroups(uses, ({ unit }) => unit.key)
  return [...byKey.values()].every((said) => countFamilies(said) / families <= MOST_SHARE_UNRULY)
}

/** The `ffe` of `giraffe` is the ordinary `ff` with a silent e at the end: rare, and no exception. */
function findSilentE(
  byLetters: ReadonlyMap<string, readonly Use[]>,
  found: readonly OrdinarySpelling[],
  examples: Examples,
): readonly OrdinarySpelling[] {
  const everywhere = new Set(found.filter(({ places }) => places.length === 0).map(({ key }) => key))
  return [...byLetters].flatMap(([letters, uses]) => {
    const keys = new Set(uses.filter(({ unit }) => !unit.vowel).map(({ unit }) => unit.key))
    return [...keys].flatMap((key): OrdinarySpelling[] => {
      const isRare = /^[^aeiouy_]+e=./.test(key) && !found.some((one) => one.key === key)
      if (!isRare || !everywhere.has(key.replace('e=', '=') as typeof key)) return []
      const words = uses.flatMap(({ unit, places, word }) => (unit.key === key && places.includes('-$') ? [word] : []))
      const example = examples.find(key, letters, words, () => true)
      return example === undefined ? [] : [{ key, example, places: ['-$'] }]
    })
  })
}

function findPlaces(said: readonly Use[], uses: readonly Use[], isTaught: boolean): readonly string[] {
  const there = (all: readonly Use[], place: string) =>
    countFamilies(all.filter(({ places }) => places.includes(place)))
  const shareToChildren = (place: string) => {
    const known = there(said.filter(isChildWord), place)
    return known < LEAST_FAMILIES_TAUGHT ? 0 : known / there(uses.filter(isChildWord), place)
  }
  const isOrdinary = (place: string, families: number, share: number) => {
    // `fully` is `full` with an ending, and no more of a rule.
    if (place.endsWith('-y')) return false
    const isBefore = place.startsWith('-')
    // What only the letter before tells is less sure: `won` is no rule of w.
    if (place.endsWith('-')) return share >= LEAST_SHARE_THERE && families >= LEAST_FAMILIES
    if (!isTaught) return share >= LEAST_SHARE_THERE && families >= LEAST_FAMILIES
    if (isBefore && share >= LEAST_SHARE_THERE) return true
    if (place.includes('_') && shareToChildren(place) >= LEAST_SHARE_TO_CHILDREN) return true
    return share >= LEAST_TAUGHT_SHARE_THERE && families >= MANY_FAMILIES
  }
  const ordinary = [...new Set(said.flatMap(({ places }) => places))].filter((place) => {
    const families = there(said, place)
    return families >= LEAST_FAMILIES_TAUGHT && isOrdinary(place, families, families / there(uses, place))
  })
  return ordinary.filter((place) => !ordinary.some((wider) => place.startsWith(`${wider}-`))).sort()
}
