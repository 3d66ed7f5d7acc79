// What is kept of a book once its text has been let go: figures, and its words as numbers.

import type { Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import type { StoryCount } from '../usage/count.ts'
import { toNamesFor } from '../usage/long-names.ts'
import type { HoldingWord, Level } from './level.ts'
import type { ReaderJudge } from './reader-judge.ts'
import { type PackedCounts, packCounts, type Vocabulary } from './vocabulary.ts'

export interface HeldWord extends Omit<HoldingWord, 'start'> {
  readonly line: number
  readonly column: number
}

export interface Book {
  /** As shown to people. */
  readonly path: string
  readonly title: string | undefined
  /** The place on the shelf that the book asks for. */
  readonly order: number | undefined
  readonly sequence: Sequence
  /** The engine in the accent of the sequence. */
  readonly phonics: Phonics
  /** The id of its step; undefined where it names none that the sequence has. */
  readonly step: string | undefined
  readonly pages: number
  /** Running words. */
  readonly words: number
  /** The share of running words that can be read at its step, 0 to 1; undefined where it has no step. */
  readonly share: number | undefined
  readonly earliest: Pick<Level, 'step' | 'share'>
  /** What keeps it from the share at its own step, and what its sentences leave open there. */
  readonly heldBackBy: readonly HeldWord[]
  readonly counts: PackedCounts
  /** The words that are read by heart at its step, and those that it says it introduces, as `toWordKey` writes them. */
  readonly sightWords: readonly string[]
  /** As written. */
  readonly practises: readonly string[]
}

export interface BookInput
  extends Pick<Book, 'path' | 'title' | 'order' | 'sequence' | 'phonics' | 'step' | 'practises'> {
  readonly count: StoryCount
  readonly level: Level
  /** The place of a source offset. */
  toPoint(offset: number): Pick<HeldWord, 'line' | 'column'>
  readonly names: readonly string[]
  /** Judges at the book's step. */
  readonly reader: ReaderJudge | undefined
  /** As `toWordKey` writes them. */
  readonly introduces: readonly string[]
}

/** @param vocabulary the words of the whole shelf; new ones are added */
export function toBook(input: BookInput, vocabulary: Vocabulary): Book {
  const { count, level, names, reader, introduces, toPoint, ...rest } = input
  const at = rest.sequence.steps.findIndex(({ id }) => id === rest.step)
  const keys = new Set(count.uses.map(({ key }) => key))
  const read =
    reader === undefined
      ? []
      : count.uses.filter((use) => reader.judgeInStory(vocabulary.toId(use), toNamesFor(use, names)).kind === 'sight')
  return {
    ...rest,
    pages: count.pages.length,
    words: count.words,
    share: level.shares[at],
    earliest: { step: level.step, share: level.share },
    heldBackBy: findHeld(level, rest, at).map(({ start, ...word }) => ({ ...word, ...toPoint(start) })),
    counts: packCounts(count.uses, vocabulary),
    sightWords: [...new Set([...read.map(({ key }) => key), ...introduces.filter((word) => keys.has(word))])],
  }
}

/** All words that hold it back where its own step comes too early, else those that their sentences leave open there. */
function findHeld(
  { step, holdingBack }: Level,
  { sequence }: Pick<Book, 'sequence'>,
  at: number,
): Level['holdingBack'] {
  const toPlace = (id: string | null): number =>
    id === null ? Infinity : sequence.steps.findIndex((one) => one.id === id)
  if (at < 0) return []
  if (toPlace(step) > at) return holdingBack
  return holdingBack.filter(({ isOpen, readableAt }) => isOpen && toPlace(readableAt) > at)
}

/** By the order that a book asks for, else by its step, else by its path. Books that ask for an order stand first. */
export function compareBooks(one: Book, other: Book): number {
  return (
    compare(one.order ?? Infinity, other.order ?? Infinity) ||
    compare(toStepPlace(one), toStepPlace(other)) ||
    (one.path < other.path ? -1 : one.path > other.path ? 1 : 0)
  )
}

// `Infinity - Infinity` is no number, so nothing is taken away.
function compare(one: number, other: number): number {
  return one < other ? -1 : one > other ? 1 : 0
}

function toStepPlace({ sequence, step }: Book): number {
  const at = sequence.steps.findIndex(({ id }) => id === step)
  return at === -1 ? Infinity : at
}
