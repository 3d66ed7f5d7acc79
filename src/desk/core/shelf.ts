// The shelf: all stories of the folder, read one after the other; a book that has not changed is not read again.

import { rules } from '../../../rules/index.ts'
import { createBookReader } from '../../check/read-book.ts'
import { readText } from '../../check/read-text.ts'
import { findIgnoring } from '../../config/index.ts'
import { STORY_NAME } from '../../files/index.ts'
import { type Problem, toProblem } from '../../problem/index.ts'
import { findStep } from '../../sequence/index.ts'
import {
  type Book,
  createVocabulary,
  type Shelf,
  type ShelvedBook,
  toShelf,
  type Vocabulary,
} from '../../shelf/index.ts'
import { toHeading } from '../../story/heading.ts'
import type { Asking } from './host.ts'
import type { StoryText } from './questions/shared.ts'
import type { BookRow, ShelfAnswer } from './questions/shelf.ts'
import { type DeskState, type Folder, folderOf } from './state.ts'

/** The share of words for the earliest step: a shelf asks when all of a book can be read. */
const WHOLE = 1

interface Kept {
  readonly text: string
  /** Its heading, where it has one. */
  readonly heading: string | undefined
  readonly book: Book | undefined
  readonly problems: readonly Problem[]
}

interface Books {
  readonly vocabulary: Vocabulary
  readonly read: ReturnType<typeof createBookReader>
  readonly kept: Map<string, Kept>
}

/** As long as no setting and no sequence has changed. */
const booksOf = new WeakMap<Folder, Books>()

function openBooks(folder: Folder): Books {
  const known = booksOf.get(folder)
  if (known) return known
  const vocabulary = createVocabulary()
  const opened = { vocabulary, read: createBookReader(folder.resources, vocabulary, WHOLE), kept: new Map() }
  booksOf.set(folder, opened)
  return opened
}

export async function readShelf(open: StoryText | undefined, state: DeskState, asking: Asking): Promise<ShelfAnswer> {
  const folder = folderOf(state)
  const books = openBooks(folder)
  const paths = await state.files.stories()
  const unread: ShelfAnswer['unread'][number][] = []
  const problems: Problem[] = []
  const found: Book[] = []
  for (const [at, path] of paths.entries()) {
    asking.progress(at, paths.length)
    await asking.pause()
    const text = path === open?.path ? { ok: true as const, value: open.text } : await state.files.read(path)
    if (text === undefined) continue
    const kept = text.ok
      ? await readBook(path, text.value, folder, books)
      : { heading: undefined, book: undefined, problems: text.problems }
    if (kept === undefined) continue
    if (kept.book) found.push(kept.book)
    else unread.push({ path, problems: kept.problems })
    if (kept.book) problems.push(...kept.problems)
  }
  const shelf = toShelf(found, books.vocabulary)
  return {
    books: shelf.books.map((book, at) => toRow(book, at, shelf, books)),
    missingSteps: shelf.missingSteps.map((missing) => ({ ...missing, title: toTitle(missing.sequence, found) })),
    neverReturning: shelf.neverReturning,
    unread,
    problems: [...problems, ...shelf.problems],
  }
}

const toTitle = (name: string, books: readonly Book[]): string =>
  books.find(({ sequence }) => sequence.name === name)?.sequence.title ?? name

/** Undefined for a file that the settings of the folder leave out. */
async function readBook(path: string, text: string, folder: Folder, books: Books): Promise<Kept | undefined> {
  const chain = await folder.configs.findFor(path)
  if (findIgnoring(chain, path)) return undefined
  const known = books.kept.get(path)
  if (known?.text === text) return known
  const read = await readText({ path, storyPath: path, source: text, chain, flags: {}, rules })
  const problems: Problem[] = []
  const toBook = async (): Promise<Book | undefined> => {
    if ('problems' in read) {
      problems.push(...read.problems)
      return undefined
    }
    problems.push(...read.own.problems)
    const [names, sightWords] = [read.settings.names, read.settings.sightWords].map((list) =>
      list.map(({ value }) => value),
    )
    return books.read({ ...read, path, names: names ?? [], sightWords: sightWords ?? [] }, (problem) =>
      problems.push(problem),
    )
  }
  const heading = 'problems' in read ? undefined : toHeading(read.story)
  const kept = { text, heading, book: await toBook(), problems }
  if (kept.book === undefined && problems.length === 0)
    problems.push(toProblem({ code: 'empty', message: 'This is no story' }))
  books.kept.set(path, kept)
  return kept
}

function toRow(book: ShelvedBook, at: number, { sightWords }: Shelf, { kept }: Books): BookRow {
  const { path, title, order, sequence, step, pages, words, different, share, newWords, newSightWords, practises } =
    book
  const stepTitle = step === undefined ? undefined : findStep(sequence, step)?.title
  return {
    ...{ path, pages, words, different, newWords, newSightWords, practises },
    title: kept.get(path)?.heading || title || toName(path),
    order: order ?? null,
    sequence: sequence.title,
    step: step === undefined ? null : { id: step, title: stepTitle ?? step },
    readableShare: share ?? null,
    notYet: share === undefined ? null : Math.round(words * (1 - share)),
    returns: sightWords.flatMap(({ what, first, times }) => {
      const count = times[at] ?? 0
      return first < at && count > 0 ? [{ word: what, times: count }] : []
    }),
    earliestStep: book.earliest.step,
  }
}

const toName = (path: string): string => (path.split('/').at(-1) ?? path).replace(STORY_NAME, '')
