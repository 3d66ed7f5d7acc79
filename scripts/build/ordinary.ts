// Measures which spellings of a sound English ordinarily uses: the share of each sound among all the times that its letters
// are written, over the dictionary's words in use. What is rarer is an exception: the `o` of `won`, the `ai` of `said`.

import { readFileSync } from 'node:fs'
import type { Lexicon } from '../../src/phonics/lexicon/open.ts'
import { type OrdinarySpelling, toPlaces, writeOrdinary } from '../../src/phonics/ordinary.ts'
import { createPhonics } from '../../src/phonics/phonics.ts'
import { createSpelling } from '../../src/phonics/spelling.ts'
import type { Accent, Phonics, Unit } from '../../src/phonics/types.ts'
import { loadChildWords } from './children.ts'
import { frequencyRank } from './frequency.ts'

/** Words in use: most that are rarer are names. */
const MOST_USED = 20_000
/** Of all the times that the letters are written; `i` as in `find` has 8 %, `o` as in `won` 4 %. */
const LEAST_SHARE = 0.06
/** Of the times that they are written between the same neighbours: `n` before `k`, `y` at the start. */
const LEAST_SHARE_THERE = 0.5
/** And of the word families in which they are written; `o_e` has 7 % as in `some` and 6 % as in `move`. */
const LEAST_FAMILY_SHARE = 0.08
/** The same of a sound that the built-in sequences teach for the letters: `o` as in `mother`, `a` as in `ball`. */
const LEAST_TAUGHT_SHARE_THERE = 0.25
/** Of the words that small children know: `money`, `month` and `monkey` against `monster`, not `monsieur` and `Montana`. */
const LEAST_SHARE_TO_CHILDREN = 0.5
/** Of word families, so that `could`, `would` and `should` make no rule. */
const LEAST_FAMILIES = 4
/** A taught sound that most words have before these letters wants fewer, one that few have wants more. */
const LEAST_FAMILIES_TAUGHT = 3
const MANY_FAMILIES = 6
/** A shorter word is the head of no family: most words that begin with `an` have nothing to do with it. */
const LEAST_HEAD = 4
/** Shorter parts of a word put together of two are ends of many words. */
const LEAST_PART = 3
/** What makes a form of a word of three letters. */
const ENDING = /^(?:s|es|d|ed|ing|e?r|e?rs|e?n|y|ly|ful)$/
/** An example is short; on a list of words for the primary grades if it can be, else much used. */
const MOST_LETTERS = 8
const GRADES = [2, 1] as const
/** For a silent letter any word in use will do: few have one. */
const ANY_GRADE = [2, 1, 0] as const

const CHILDREN = loadChildWords()

interface Use {
  readonly unit: Unit
  readonly word: string
  readonly places: readonly string[]
}

const ACCENTS: readonly Accent[] = ['general-american', 'southern-british']
const SEQUENCES = ['series', 'england', 'common-core']

/** The tables of both accents, as the lexicon file holds them. */
export function measureBoth(lexicon: Lexicon, rows: readonly { letters: string; example: string }[]): string {
  const examples = new Map<string, string[]>()
  const taught = SEQUENCES.flatMap((name) => {
    const yaml = readFileSync(new URL(`../../src/sequence/built-in/${name}.yaml`, import.meta.url), 'utf8')
    return [...yaml.matchAll(/- (\S+) as in ([a-z]+)/g)].map(([, letters = '', example = '']) => ({ letters, example }))
  })
  for (const { letters, example } of [...taught, ...rows])
    examples.set(letters, [...(examples.get(letters) ?? []), example])
  const spelling = createSpelling(lexicon)
  return ACCENTS.map((accent) =>
    [accent, writeOrdinary(measureOrdinary(createPhonics(lexicon, accent, spelling), examples))].join('\n'),
  ).join('\n\n')
}

/** @param examples candidates by letters, the best first; others are looked for where none of them shows the sound */
function measureOrdinary(
  phonics: Phonics,
  examples: ReadonlyMap<string, readonly string[]>,
): readonly OrdinarySpelling[] {
  const byLetters = toGroups(collect(phonics), ({ unit }) => toLetters(unit))
  const found = [...byLetters].flatMap(([letters, uses]) => {
    const byKey = toGroups(uses, ({ unit }) => unit.key)
    const shows = (key: string, said: readonly Use[]) =>
      findExample(
        key,
        letters,
        [...(examples.get(letters) ?? []), ...said.map(({ word }) => word)],
        phonics,
        key.endsWith('=') ? ANY_GRADE : GRADES,
      )
    return [...byKey].flatMap(([key, said]): OrdinarySpelling[] => {
      const isTaught = (examples.get(letters) ?? []).some((word) => isShown(key, letters, word, phonics))
      const places = findOrdinaryPlaces(key, said, uses, isTaught)
      const example = places && shows(key, said)
      return example === undefined ? [] : [{ key, example, places: places ?? [] }]
    })
  })
  return [...found, ...findSilentE(byLetters, found, phonics)]
}

/** Empty for everywhere, undefined for nowhere. A silent letter is ordinary in its places only. */
function findOrdinaryPlaces(
  key: string,
  said: readonly Use[],
  uses: readonly Use[],
  isTaught: boolean,
): readonly string[] | undefined {
  const families = countFamilies(said)
  if (families < LEAST_FAMILIES) return undefined
  const isEverywhere =
    !key.endsWith('=') &&
    said.length / uses.length >= LEAST_SHARE &&
    families / countFamilies(uses) >= LEAST_FAMILY_SHARE
  if (isEverywhere) return []
  const places = findPlaces(said, uses, isTaught)
  return places.length === 0 ? undefined : places
}

/** The `ffe` of `giraffe` is the ordinary `ff` with a silent e at the end: rare, and no exception. */
function findSilentE(
  byLetters: ReadonlyMap<string, readonly Use[]>,
  found: readonly OrdinarySpelling[],
  phonics: Phonics,
): readonly OrdinarySpelling[] {
  const everywhere = new Set(found.filter(({ places }) => places.length === 0).map(({ key }) => key))
  return [...byLetters].flatMap(([letters, uses]) => {
    const keys = new Set(uses.filter(({ unit }) => !unit.vowel).map(({ unit }) => unit.key))
    return [...keys].flatMap((key): OrdinarySpelling[] => {
      const isRare = /^[^aeiouy_]+e=./.test(key) && !found.some((one) => one.key === key)
      if (!isRare || !everywhere.has(key.replace('e=', '=') as typeof key)) return []
      const words = uses.flatMap(({ unit, places, word }) => (unit.key === key && places.includes('-$') ? [word] : []))
      const example = findExample(key, letters, words, phonics, ANY_GRADE)
      return example === undefined ? [] : [{ key, example, places: ['-$'] }]
    })
  })
}

function toGroups<Name>(uses: readonly Use[], toName: (use: Use) => Name): ReadonlyMap<Name, readonly Use[]> {
  const groups = new Map<Name, Use[]>()
  for (const use of uses) {
    const group = groups.get(toName(use))
    if (group === undefined) groups.set(toName(use), [use])
    else group.push(use)
  }
  return groups
}

const toLetters = ({ letters, base }: Unit): string => base ?? letters

/** The units of the first pronunciation of each word in use, endings and worn-down vowels apart. */
function collect(phonics: Phonics): readonly Use[] {
  const uses: Use[] = []
  for (const [word, rank] of [...frequencyRank].sort((x, y) => x[1] - y[1])) {
    if (rank > MOST_USED || word.includes("'")) continue
    const { source, pronunciations } = phonics.read(word)
    const units = source === 'guess' ? [] : (pronunciations[0]?.units ?? [])
    for (const [at, unit] of units.entries()) {
      // The urr of `hurry` is known by who knows ur, but shows no ur.
      if ((unit.kind !== 'correspondence' && unit.kind !== 'silent') || unit.reduced) continue
      if (!unit.key.startsWith(`${toLetters(unit)}=`)) continue
      uses.push({ unit, word, places: toPlaces(units.map(toLetters), at) })
    }
  }
  return uses
}

/** `prettier` is `pretty` with an ending. */
const withoutI = (word: string): string => word.replace(/i(?:er|est|ly|ness)$/, 'y')

/** `sewing` is of the family of `sew`, and `warm` is not of that of `war`. */
const isOfFamily = (word: string, head: string): boolean =>
  word.startsWith(head) &&
  (head.length >= LEAST_HEAD || (head.length === LEAST_HEAD - 1 && ENDING.test(word.slice(head.length))))

/** A word is of the family of the shorter one that it begins with: `wonderful` of `wonder`. */
function countFamilies(uses: readonly Use[]): number {
  const words = new Set(uses.map((use) => withoutI(use.word)))
  let families = 0
  const heads: string[] = []
  for (const word of [...words].sort()) {
    // `eyes` is of the family of `eye`, though `eyelid` stands between.
    while (heads.length > 0 && !word.startsWith(heads.at(-1) ?? '')) heads.pop()
    if (heads.some((head) => isOfFamily(word, head)) || isPutTogether(word, words)) continue
    heads.push(word)
    families++
  }
  return families
}

/** Of two words in use, one of them among these: `girlfriend` of `friend`, `anything` of `any`. */
function isPutTogether(word: string, words: ReadonlySet<string>): boolean {
  for (let cut = LEAST_PART; cut <= word.length - LEAST_PART; cut++) {
    const [first, last] = [word.slice(0, cut), word.slice(cut)]
    if ((words.has(first) && isUsed(last)) || (words.has(last) && isUsed(first))) return true
  }
  return false
}

/** One brow is a word in use, and so many `brows` are. */
const isUsed = (word: string): boolean =>
  [word, word.replace(/(?<=....)e?s$/, '')].some(
    (one) => (frequencyRank.get(one) ?? Number.POSITIVE_INFINITY) <= MOST_USED,
  )

function findPlaces(said: readonly Use[], uses: readonly Use[], isTaught: boolean): readonly string[] {
  const there = (all: readonly Use[], place: string) =>
    countFamilies(all.filter(({ places }) => places.includes(place)))
  const shareToChildren = (place: string) => {
    const isKnown = ({ word }: Use) => CHILDREN.ownGrade(word) >= GRADES[0]
    const known = there(said.filter(isKnown), place)
    return known < LEAST_FAMILIES_TAUGHT ? 0 : known / there(uses.filter(isKnown), place)
  }
  const isOrdinary = (place: string, families: number, share: number) => {
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

/** The letters say this sound in the word, and no other. */
function isShown(key: string, letters: string, word: string, phonics: Phonics): boolean {
  const { source, pronunciations, heteronym } = phonics.read(word)
  const units = pronunciations[0]?.units.filter((unit) => toLetters(unit) === letters) ?? []
  return source !== 'guess' && !heteronym && units.length > 0 && units.every((unit) => unit.key === key)
}

/** The first word that a line `letters as in word` can be written with. */
function findExample(
  key: string,
  letters: string,
  words: readonly string[],
  phonics: Phonics,
  grades: readonly number[] = GRADES,
): string | undefined {
  const isKnown = (word: string, grade: number) => word.length <= MOST_LETTERS && CHILDREN.ownGrade(word) >= grade
  const found = grades.map((grade) =>
    words.find((word) => isKnown(word, grade) && isShown(key, letters, word, phonics)),
  )
  return found.find((word) => word !== undefined)
}
