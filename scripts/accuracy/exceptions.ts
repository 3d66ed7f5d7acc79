// How much of a spelling's words have each of its sounds, and whether a word with it is told as an exception: the figures of the rule.
//
//   npm run accuracy -- exceptions o ou    a line a sound, the commonest first

import type { Phonics, Unit } from '../../src/phonics/types.ts'
import { collect, countFamilies, toGroups, toLetters, type Use } from '../build/letter-uses.ts'
import { isChildWord } from '../build/ordinary.ts'

export interface SoundShare {
  readonly key: string
  /** Families of words in use, and of those on the lists for the primary grades. */
  readonly families: readonly [said: number, all: number]
  readonly childFamilies: readonly [said: number, all: number]
  /** Words that show it, with whether each is told as an exception where no step teaches the sound. */
  readonly words: ReadonlyMap<string, boolean>
}

/** @param letters all spellings where none is named */
export function measureExceptions(phonics: Phonics, letters: readonly string[]): readonly SoundShare[] {
  const wanted = new Set(letters)
  const groups = toGroups(collect(phonics), ({ unit }) => toLetters(unit))
  return [...groups].flatMap(([spelling, uses]) => (letters.length > 0 && !wanted.has(spelling) ? [] : toShares(uses)))
}

const toShares = (uses: readonly Use[]): readonly SoundShare[] =>
  [...toGroups(uses, ({ unit }) => unit.key)]
    .map(([key, said]) => ({
      key,
      families: [countFamilies(said), countFamilies(uses)] as const,
      childFamilies: [countFamilies(said.filter(isChildWord)), countFamilies(uses.filter(isChildWord))] as const,
      words: new Map(said.map(({ word, unit }) => [word, isException(unit)])),
    }))
    .sort((one, other) => other.families[0] - one.families[0])

const isException = ({ shown }: Unit): boolean => shown === undefined
