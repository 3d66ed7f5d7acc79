// The words of many books, each held once: a book keeps numbers, so that a shelf of thousands stays small.

import type { WordUse } from '../usage/count.ts'

export type WordId = number

/** A word in one sense, as `WordUse` without its place. */
export type KnownWord = Pick<WordUse, 'key' | 'text' | 'form' | 'spoken'>

/** Words of one book and how often each runs. */
export interface PackedCounts {
  readonly ids: Uint32Array
  readonly times: Uint32Array
}

export interface Vocabulary {
  /** The number of a word in its sense; given at the first time it is asked for. */
  toId(word: KnownWord): WordId
  wordAt(id: WordId): KnownWord
  /** A word as people write it: `I`, `Meg`, and in small letters whatever some book has in small letters. */
  shown(key: string): string
  readonly size: number
}

export function createVocabulary(): Vocabulary {
  const ids = new Map<string, WordId>()
  const words: KnownWord[] = []
  const shown = new Map<string, string>()
  return {
    toId({ key, text, form, spoken }) {
      const name = spoken === undefined ? text : `${text}\n${spoken}`
      const known = ids.get(name)
      if (known !== undefined) return known
      ids.set(name, words.length)
      if (text === key || !shown.has(key)) shown.set(key, text)
      return words.push({ key, text, form, spoken }) - 1
    },
    wordAt(id) {
      const word = words[id]
      if (word === undefined) throw new RangeError(`no word has the number ${id}`)
      return word
    },
    shown: (key) => shown.get(key) ?? key,
    get size() {
      return words.length
    },
  }
}

export function packCounts(uses: readonly WordUse[], vocabulary: Vocabulary): PackedCounts {
  return {
    ids: Uint32Array.from(uses, (use) => vocabulary.toId(use)),
    times: Uint32Array.from(uses, ({ times }) => times),
  }
}

/** Calls back with every word of a book. A word that stands inside and outside a name comes twice. */
export function eachCount({ ids, times }: PackedCounts, call: (id: WordId, times: number) => void): void {
  for (const [at, id] of ids.entries()) call(id, times[at] ?? 0)
}
