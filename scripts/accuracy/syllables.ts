// Compares syllable counts with the dictionary's stress-marked vowels, and a rule of thumb from npm with both.

import { dictionary } from 'cmu-pronouncing-dictionary'
import { syllable } from 'syllable'
import type { Phonics } from '../../src/phonics/types.ts'
import { readDictionary } from '../build/pronunciations.ts'

export interface SyllableFigures {
  readonly words: number
  /** Words where the count is that of one of the dictionary's pronunciations. */
  readonly ours: number
  readonly theirs: number
  /** Words that we count otherwise: the rows that were mended (`fire`), mostly. */
  readonly differing: readonly string[]
}

const toCount = (sounds: string): number => sounds.match(/\d/g)?.length ?? 0

/** Over all ordinary words that have no apostrophe; takes a few seconds. */
export function measureSyllables(phonics: Phonics): SyllableFigures {
  const counts = readCounts()
  const words = readDictionary()
    .words.map(({ word }) => word)
    .filter((word) => !word.includes("'"))
  const differing: string[] = []
  let theirs = 0
  for (const word of words) {
    const possible = counts.get(word)
    const ours = phonics.read(word).pronunciations[0]?.syllables.length ?? 0
    if (!possible?.has(ours)) differing.push(word)
    if (possible?.has(syllable(word))) theirs++
  }
  return { words: words.length, ours: words.length - differing.length, theirs, differing }
}

function readCounts(): ReadonlyMap<string, ReadonlySet<number>> {
  const counts = new Map<string, Set<number>>()
  for (const [key, sounds] of Object.entries(dictionary)) {
    const word = key.replace(/\(\d\)$/, '')
    const known = counts.get(word) ?? new Set<number>()
    counts.set(word, known.add(toCount(sounds)))
  }
  return counts
}
