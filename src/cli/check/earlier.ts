// `check --shelf`: the words that the readers of a story have met in the books before it.

import { createBookReader } from '../../check/read-book.ts'
import { type Book, compareBooks, createVocabulary, toFirstPlaces } from '../../shelf/index.ts'
import type { WordSet } from '../../usage/count.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'
import { createTextRun, type TextOptions } from '../texts.ts'

/** The words before a story; for a story that does not stand on the shelf, those of all its books. */
export type FindEarlierWords = (storyPath: string) => WordSet

/** Undefined where the shelf cannot be read, which is told. */
export async function readEarlierWords(
  shelf: string,
  options: TextOptions,
  io: Io,
): Promise<FindEarlierWords | undefined> {
  const run = createTextRun(io, options)
  if (run === undefined) return undefined
  const vocabulary = createVocabulary()
  const read = createBookReader(createResources(io), vocabulary, 1)
  const found: { readonly storyPath: string; readonly book: Book }[] = []
  await run.each([shelf], async (text, fail) => {
    const book = await read(text, fail)
    if (book !== undefined) found.push({ storyPath: text.storyPath, book })
  })
  if (found.length === 0) return undefined
  found.sort((one, other) => compareBooks(one.book, other.book))
  const first = toFirstPlaces(
    found.map(({ book }) => book),
    vocabulary,
  )
  const places = new Map(found.map((one, place) => [one.storyPath, place]))
  return (storyPath) => {
    const place = places.get(storyPath) ?? found.length
    const isBefore = (word: string): boolean => (first.get(word) ?? place) < place
    return { has: isBefore, [Symbol.iterator]: () => [...first.keys()].filter(isBefore)[Symbol.iterator]() }
  }
}
