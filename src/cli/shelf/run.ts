// One run of `shelf`: book after book is read, counted and let go; only figures are kept.

import { findSequence } from '../../check/who-reads.ts'
import { type Origin, type Problem, toProblem, withOrigin } from '../../problem/index.ts'
import { toCsvShelf, toJsonShelf, toPrettyShelf } from '../../report/shelf.ts'
import type { Resources } from '../../resources/types.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import { withReader } from '../../sequence/reader.ts'
import type { Sequence } from '../../sequence/types.ts'
import {
  type Book,
  createLevelFinder,
  createReaderJudge,
  createVocabulary,
  type LevelFinder,
  type ReaderJudge,
  toBook,
  toShelf,
  type Vocabulary,
} from '../../shelf/index.ts'
import { countText } from '../../usage/count-text.ts'
import { toWordKey } from '../../verdict/index.ts'
import { complainOf, type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { createMemory } from '../memory.ts'
import { createResources } from '../resources.ts'
import { createTextRun, type NamedText, toShare } from '../texts.ts'

export interface ShelfOptions {
  readonly sequence?: string
  readonly accent?: string
  readonly config?: string
  readonly share: string
  readonly format: 'pretty' | 'json' | 'csv'
}

export async function runShelf(given: readonly string[], options: ShelfOptions, io: Io): Promise<ExitCode> {
  const share = toShare(options.share)
  const run = createTextRun(io, options)
  if (run === undefined) return 2
  const vocabulary = createVocabulary()
  const read = createBookReader(createResources(io), vocabulary, share)
  const books: Book[] = []
  await run.each(given, async (text, fail) => {
    const book = await read(text, fail)
    if (book !== undefined) books.push(book)
  })
  const shelf = toShelf(books, vocabulary)
  complainOf(io, shelf.problems)
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonShelf(shelf, share), null, 2)}\n`)
  else if (options.format === 'csv') io.stdout.write(toCsvShelf(shelf))
  else if (books.length > 0)
    io.stdout.write(toPrettyShelf(shelf, share, { width: toWidth(io), paint: await toPaint(io) }))
  if (run.hasFailed()) return 2
  return shelf.problems.length > 0 ? 1 : 0
}

type ReadBook = (text: NamedText, fail: (problem: Problem) => void) => Promise<Book | undefined>

/** Reads books into figures. @param share of the running words, for the earliest step; 0 to 1 */
export function createBookReader(resources: Resources, vocabulary: Vocabulary, share: number): ReadBook {
  const findLevels = createMemory(
    (sequence: Sequence, sightWords: readonly string[]): LevelFinder =>
      createLevelFinder(resources.phonicsFor(sequence.accent), sequence, { sightWords }),
  )
  const findJudge = createMemory(
    (sequence: Sequence, sightWords: readonly string[], step: string): ReaderJudge =>
      createReaderJudge(
        resources.phonicsFor(sequence.accent),
        withReader(knowledgeAt(sequence, step), { sightWords }),
        vocabulary,
      ),
  )
  return async ({ path, story, settings, own, names, sightWords }, fail) => {
    const asked = await findSequence(settings, resources)
    if (!asked.ok) {
      for (const problem of asked.problems) fail(problem)
      return undefined
    }
    const sequence = asked.value
    const step = findBookStep(settings, sequence, fail)
    const levels = findLevels(sequence, sightWords)
    const count = await countText(story, names, levels.isMixed, resources)
    return toBook(
      {
        path,
        title: own.title?.value,
        order: own.order?.value,
        sequence,
        phonics: resources.phonicsFor(sequence.accent),
        step,
        practises: own.practises.map(({ value }) => value),
        introduces: own.introduces.map(({ value }) => toWordKey(value)),
        count,
        level: levels.find(count, names, share),
        names,
        reader: step === undefined ? undefined : findJudge(sequence, sightWords, step),
      },
      vocabulary,
    )
  }
}

/** Undefined, and told, where the sequence has no such step; undefined too where the book names none. */
function findBookStep(
  settings: NamedText['settings'],
  sequence: Sequence,
  fail: (problem: Problem) => void,
): string | undefined {
  const asked = settings.step.value
  if (asked === undefined) return undefined
  const step = findStep(sequence, asked)
  if (step === undefined) fail(toStepless(asked, sequence, settings.step))
  return step?.id
}

/** Where the step is set: at the top of the book, or in a config. */
const toStepless = (asked: string, { name }: Sequence, step: Origin): Problem =>
  withOrigin(
    toProblem({
      code: 'unknown-name',
      message: `The sequence \`${name}\` has no step \`${asked}\`, so the book stands here without a step`,
    }),
    step,
  )
