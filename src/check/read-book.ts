// Reads a text as a book of a shelf: into figures, after which it is let go.

import { type Origin, type Problem, toProblem, withOrigin } from '../problem/index.ts'
import type { Resources } from '../resources/types.ts'
import { findStep, knowledgeAt } from '../sequence/index.ts'
import { withReader } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import {
  type Book,
  createLevelFinder,
  createMemory,
  createReaderJudge,
  type LevelFinder,
  type ReaderJudge,
  toBook,
  type Vocabulary,
} from '../shelf/index.ts'
import { createLines } from '../story/index.ts'
import { countText } from '../usage/count-text.ts'
import { toWordKey } from '../verdict/index.ts'
import type { ReadText } from './read-text.ts'
import { findSequence } from './who-reads.ts'

interface BookText extends ReadText {
  /** As shown to people. */
  readonly path: string
  /** Names that the story allows, as written. */
  readonly names: readonly string[]
  /** Sight words that its settings add. */
  readonly sightWords: readonly string[]
}

type ReadBook = (text: BookText, fail: (problem: Problem) => void) => Promise<Book | undefined>

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
        toPoint: createLines(story.source).toPoint,
        names,
        reader: step === undefined ? undefined : findJudge(sequence, sightWords, step),
      },
      vocabulary,
    )
  }
}

/** Undefined, and told, where the sequence has no such step; undefined too where the book names none. */
function findBookStep(
  settings: BookText['settings'],
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
