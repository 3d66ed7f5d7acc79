// The word that shows a spelling in a message: short and known, with no ending of its own and not put together of two.

import { readFileSync } from 'node:fs'
import type { Phonics } from '../../src/phonics/types.ts'
import { loadChildWords } from './children.ts'
import { toLetters } from './letter-uses.ts'

/** On a list of words for the primary grades if it can be, else much used. */
const MOST_LETTERS = 8
const GRADES = [2, 1] as const
/** For a silent letter any word in use will do: few have one. */
const ANY_GRADE = [2, 1, 0] as const

const SEQUENCES = ['series', 'england', 'common-core']

export const CHILDREN = loadChildWords()
export const LEAST_GRADE = GRADES[0]

interface Row {
  readonly letters: string
  readonly example: string
}

export interface Examples {
  /** Whether a word by which the letters are taught, or that of a row of the table, has the sound. */
  isTaught(key: string, letters: string): boolean
  /**
   * The first word that a line `letters as in word` can be written with. Those by which the built-in sequences teach come first, whoever
   * knows them: `colour`, `gym`.
   * @param words in use that say it so, the most used first
   * @param isGood where given, whether the word is none that is itself told as an exception
   */
  find(key: string, letters: string, words: readonly string[], isGood?: (word: string) => boolean): string | undefined
}

/** @param rows of the table of correspondences */
export function createExamples(rows: readonly Row[]): (phonics: Phonics) => Examples {
  const taught = toLists(SEQUENCES.flatMap(readTaught))
  const others = toLists(rows)
  const of = (lists: ReadonlyMap<string, readonly string[]>, letters: string) => lists.get(letters) ?? []
  return (phonics) => {
    const isShown = createIsShown(phonics)
    const isSimple = createIsSimple(phonics)
    return {
      isTaught: (key, letters) =>
        [...of(taught, letters), ...of(others, letters)].some((word) => isShown(key, letters, word)),
      find: (key, letters, words, isGood) => {
        const first = of(taught, letters)
        const more = [...of(others, letters), ...words]
        const search = (some: readonly string[], grades: readonly number[]) =>
          findKnown(some, grades, (word) => isShown(key, letters, word))
        const searchSimple = (some: readonly string[], grades: readonly number[]) =>
          search(some.filter(isSimple), grades) ?? search(some, grades)
        const grades = key.endsWith('=') ? ANY_GRADE : GRADES
        if (isGood === undefined) return search(first, ANY_GRADE) ?? searchSimple(more, grades)
        const good = more.filter(isGood)
        return (
          search(first.filter(isGood), ANY_GRADE) ??
          searchSimple(good, grades) ??
          searchSimple(good, ANY_GRADE) ??
          searchSimple([...first, ...more], grades)
        )
      },
    }
  }
}

const readTaught = (name: string): readonly Row[] => {
  const yaml = readFileSync(new URL(`../../src/sequence/built-in/${name}.yaml`, import.meta.url), 'utf8')
  return [...yaml.matchAll(/- (\S+) as in ([a-z]+)/g)].map(([, letters = '', example = '']) => ({ letters, example }))
}

function toLists(rows: readonly Row[]): ReadonlyMap<string, readonly string[]> {
  const lists = new Map<string, string[]>()
  for (const { letters, example } of rows) lists.set(letters, [...(lists.get(letters) ?? []), example])
  return lists
}

/** Whether the letters say this sound in the word, and no other. */
function createIsShown(phonics: Phonics): (key: string, letters: string, word: string) => boolean {
  return (key, letters, word) => {
    const { source, pronunciations, heteronym } = phonics.read(word)
    const units = pronunciations[0]?.units.filter((unit) => toLetters(unit) === letters) ?? []
    return source !== 'guess' && !heteronym && units.length > 0 && units.every((unit) => unit.key === key)
  }
}

/** `yourself` and `neighbours` are poor examples. */
function createIsSimple(phonics: Phonics): (word: string) => boolean {
  return (word) => {
    const { pronunciations, parts } = phonics.read(word)
    return parts === undefined && pronunciations[0]?.units.every(({ kind }) => kind !== 'inflection') === true
  }
}

function findKnown(
  words: readonly string[],
  grades: readonly number[],
  isShown: (word: string) => boolean,
): string | undefined {
  for (const grade of grades) {
    const found = words.find((word) => word.length <= MOST_LETTERS && CHILDREN.ownGrade(word) >= grade && isShown(word))
    if (found !== undefined) return found
  }
  return undefined
}
