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
/** Of word families, so that `could`, `would` and `should` make no rule. */
const LEAST_FAMILIES = 4
/** A shorter word is the head of no family: most words that begin with `an` have nothing to do with it. */
const LEAST_HEAD = 4
/** What makes a form of a word of three letters. */
const ENDING = /^(?:s|es|d|ed|ing|e?r|e?rs|e?n|y|ly|ful)$/
/** An example is short; on a list of words for the primary grades if it can be, else much used. */
const MOST_LETTERS = 8
const GRADES = [2, 1] as const

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
export function measureOrdinary(
  phonics: Phonics,
  examples: ReadonlyMap<string, readonly string[]>,
): readonly OrdinarySpelling[] {
  const byLetters = toGroups(collect(phonics), ({ unit }) => toLetters(unit))
  return [...byLetters].flatMap(([letters, uses]) => {
    const byKey = toGroups(uses, ({ unit }) => unit.key)
    return [...byKey].flatMap(([key, said]): OrdinarySpelling[] => {
      if (key.endsWith('=') || countFamilies(said) < LEAST_FAMILIES) return []
      const isEverywhere = said.length / uses.length >= LEAST_SHARE
      const places = isEverywhere ? [] : findPlaces(said, uses)
      if (!isEverywhere && places.length === 0) return []
      const example = findExample(
        key,
        letters,
        [...(examples.get(letters) ?? []), ...said.map(({ word }) => word)],
        phonics,
      )
      return example === undefined ? [] : [{ key, example, places }]
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
      if (unit.kind !== 'correspondence' || !unit.key.startsWith(`${toLetters(unit)}=`)) continue
      uses.push({ unit, word, places: toPlaces(units.map(toLetters), at) })
    }
  }
  return uses
}

/** `sewing` is of the family of `sew`, and `warm` is not of that of `war`. */
const isOfFamily = (word: string, head: string): boolean =>
  word.startsWith(head) &&
  (head.length >= LEAST_HEAD || (head.length === LEAST_HEAD - 1 && ENDING.test(word.slice(head.length))))

/** A word is of the family of the shorter one that it begins with: `wonderful` of `wonder`. */
function countFamilies(uses: readonly Use[]): number {
  let families = 0
  let head = ''
  for (const word of uses.map((use) => use.word).sort()) {
    if (isOfFamily(word, head)) continue
    head = word
    families++
  }
  return families
}

function findPlaces(said: readonly Use[], uses: readonly Use[]): readonly string[] {
  const there = (all: readonly Use[], place: string) =>
    countFamilies(all.filter(({ places }) => places.includes(place)))
  const ordinary = [...new Set(said.flatMap(({ places }) => places))].filter((place) => {
    const families = there(said, place)
    return families >= LEAST_FAMILIES && families / there(uses, place) >= LEAST_SHARE_THERE
  })
  return ordinary.filter((place) => !ordinary.some((wider) => place.startsWith(`${wider}-`))).sort()
}

/** The first word that a line `letters as in word` can be written with: the letters say this sound there, and no other. */
function findExample(key: string, letters: string, words: readonly string[], phonics: Phonics): string | undefined {
  const shows = (word: string): boolean => {
    const { source, pronunciations, heteronym } = phonics.read(word)
    const units = pronunciations[0]?.units.filter((unit) => toLetters(unit) === letters) ?? []
    return source !== 'guess' && !heteronym && units.length > 0 && units.every((unit) => unit.key === key)
  }
  const isKnown = (word: string, grade: number) => word.length <= MOST_LETTERS && CHILDREN.ownGrade(word) >= grade
  const found = GRADES.map((grade) => words.find((word) => isKnown(word, grade) && shows(word)))
  return found.find((word) => word !== undefined)
}
