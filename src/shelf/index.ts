// Counting over words, pages and books: what other folders may use.

export { type Book, compareBooks, type HeldWord, toBook } from './book.ts'
export { createLevelFinder, type Level, type LevelFinder } from './level.ts'
export {
  type BookGap,
  type CountedBook,
  findGapOf,
  type Match,
  matchBook,
  toCountedBook,
  toShareOf,
} from './match.ts'
export { createMemory } from './memory.ts'
export { findNext, type NextLesson } from './next.ts'
export { createReaderJudge, type ReaderJudge } from './reader-judge.ts'
export type { Recurrence } from './recurrence.ts'
export {
  type Shelf,
  type ShelvedBook,
  toFirstPlaces,
  toShelf,
} from './shelf.ts'
export { findLessons, type Lesson, type MissingWord } from './teach.ts'
export { createVocabulary, type Vocabulary } from './vocabulary.ts'
