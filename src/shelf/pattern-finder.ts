// Asks the words of a shelf for the patterns that its books practise, each word once a pattern.

import { createWordJudge } from '../verdict/index.ts'
import { findPattern, type Pattern } from '../verdict/pattern.ts'
import type { Book } from './book.ts'
import type { Vocabulary, WordId } from './vocabulary.ts'

export type HasPattern = (id: WordId) => boolean

export interface PatternFinder {
  /**
   * What a book means by a pattern that it practises, asked of the words that `reads`, the same book or another, has a child
   * sound out at its step; undefined where the book's sequence does not have the pattern.
   */
  find(written: string, book: Reads, reads?: Reads): HasPattern | undefined
}

/** The last step stands for a book that names none. */
type Reads = Pick<Book, 'sequence' | 'step' | 'phonics'>

export function createPatternFinder(vocabulary: Vocabulary): PatternFinder {
  const known = new Map<string, HasPattern | undefined>()
  return {
    find(written, book, reads = book) {
      const name = [written, toName(book), toName(reads)].join('\n')
      if (known.has(name)) return known.get(name)
      const pattern = findPattern(written, book.sequence, book.step)
      const hasIt = pattern === undefined ? undefined : remember(pattern, reads, vocabulary)
      known.set(name, hasIt)
      return hasIt
    },
  }
}

const toName = ({ sequence, step, phonics }: Reads): string => [sequence.name, step ?? '', phonics.accent].join('\n')

function remember(pattern: Pattern, { sequence, step, phonics }: Reads, vocabulary: Vocabulary): HasPattern {
  const asked: boolean[] = []
  const judge = createWordJudge(sequence, step ?? sequence.steps.at(-1)?.id ?? '')
  return (id) => {
    const { text, form, spoken } = vocabulary.wordAt(id)
    const isPractised = () => {
      const pronunciations = phonics.read(text)
      return pattern.isIn(pronunciations, spoken) && pattern.isPractised(text, judge(pronunciations, spoken).verdict)
    }
    const hasIt = asked[id] ?? (form === 'word' && isPractised())
    asked[id] = hasIt
    return hasIt
  }
}
