// Asks the words of a shelf for the patterns that its books practise, each word once a pattern.

import type { Phonics } from '../phonics/types.ts'
import { findPattern, type Pattern } from '../verdict/pattern.ts'
import type { Book } from './book.ts'
import type { Vocabulary, WordId } from './vocabulary.ts'

export type HasPattern = (id: WordId) => boolean

export interface PatternFinder {
  /** What a book means by a pattern that it practises; undefined where its sequence does not have it. */
  find(written: string, book: Pick<Book, 'sequence' | 'step' | 'phonics'>): HasPattern | undefined
}

export function createPatternFinder(vocabulary: Vocabulary): PatternFinder {
  const known = new Map<string, HasPattern | undefined>()
  return {
    find(written, { sequence, step, phonics }) {
      const name = [sequence.name, phonics.accent, step ?? '', written].join('\n')
      if (known.has(name)) return known.get(name)
      const pattern = findPattern(written, sequence, step)
      const hasIt = pattern === undefined ? undefined : remember(pattern, phonics, vocabulary)
      known.set(name, hasIt)
      return hasIt
    },
  }
}

function remember(pattern: Pattern, phonics: Phonics, vocabulary: Vocabulary): HasPattern {
  const asked: boolean[] = []
  return (id) => {
    const { text, form, spoken } = vocabulary.wordAt(id)
    const hasIt = asked[id] ?? (form === 'word' && pattern.isIn(phonics.read(text), spoken))
    asked[id] = hasIt
    return hasIt
  }
}
