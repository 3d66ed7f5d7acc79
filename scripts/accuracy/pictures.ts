// Measures which nouns are called nameable by a picture, against lists that were made without the rule.

import { readFileSync } from 'node:fs'
import { findFacts } from '../build/word-facts.ts'
import { loadWordSources } from '../build/words.ts'
import { readRows } from './read-rows.ts'

/** One list: how many of its words are called nameable, and which of them are called wrongly. */
export interface PictureFigure {
  readonly what: string
  readonly source: string
  readonly words: number
  readonly nameable: number
  readonly wrong: readonly string[]
}

/** Reads the lists beside the tests. Takes about a second, most of it WordNet. */
export function measurePictures(): readonly PictureFigure[] {
  const sources = loadWordSources()
  // The facts are of single words; a name of two (Santa Claus) is asked of the rule itself.
  const isNameable = (word: string): boolean => {
    const lower = word.toLowerCase()
    const answer = word.includes(' ') ? sources.showable.nameable(lower, true) : findFacts(lower, sources).nameable
    return answer !== 'no'
  }
  const measure = (what: string, source: string, words: readonly string[], isRight: boolean): PictureFigure => ({
    what,
    source,
    words: words.length,
    nameable: words.filter(isNameable).length,
    wrong: words.filter((word) => isNameable(word) !== isRight),
  })
  const heldOut = readList('held-out-nouns.txt')
  const marked = (mark: string): string[] => heldOut.filter((row) => row.startsWith(mark)).map((row) => row.slice(2))
  return [
    measure('picture nouns', 'Dolch 1948', readList('dolch-nouns.txt'), true),
    measure('abstract nouns', "the project's own list", readList('abstract-nouns.txt'), false),
    measure('picture nouns, held out', "the project's own list", marked('+'), true),
    measure('abstract nouns, held out', "the project's own list", marked('-'), false),
  ]
}

function readList(file: string): string[] {
  return readRows(readFileSync(new URL(`../../tests/words/data/${file}`, import.meta.url), 'utf8'))
}
