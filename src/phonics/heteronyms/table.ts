// The heteronyms of general and children's English, found by spelling.

import { ate } from './rows/ate.ts'
import { read } from './rows/read.ts'
import { senses } from './rows/senses.ts'
import { stress } from './rows/stress.ts'
import { use } from './rows/use.ts'
import type { Heteronym } from './types.ts'

/** All rows, by kind and in order of spelling inside a kind. */
export const heteronyms: readonly Heteronym[] = [...read, ...senses, ...use, ...ate, ...stress]

const byWord: ReadonlyMap<string, Heteronym> = new Map(heteronyms.map((row) => [row.word, row]))

/** The row of a word in any case; undefined for a word with one spoken form. */
export function findHeteronym(word: string): Heteronym | undefined {
  return byWord.get(word.toLowerCase())
}
