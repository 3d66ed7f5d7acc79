// A plan for one lesson: the new thing with example words, what goes in a box, a list, slips, sentences and a book.

import { findWords, type Pool, type Spelling } from '../finder/index.ts'
import type { TaughtItem } from '../sequence/item.ts'

/** Words from the finder for one new thing; every list is empty where there are no such words. */
export interface PlanWords {
  /** That show the new thing, the best known first. */
  readonly examples: readonly string[]
  /** For a box of small objects, or for picture cards where there are too few objects. */
  readonly box: { readonly of: 'objects' | 'pictures'; readonly words: readonly string[] }
  /** To read without a picture, words other than nouns too. */
  readonly list: readonly string[]
  /** To read silently and act out or fetch. */
  readonly slips: readonly string[]
}

const EXAMPLES = 6
const BOX = 6
const LIST = 10
const SLIPS = 6
/** Fewer objects than this are no box. */
const FEWEST = 3

/**
 * @param pool of a reader who knows the new thing already
 * @param spelling the new thing in letters; undefined for a word by heart, which has no words of its own
 */
export function planWords(pool: Pool, spelling: Spelling | undefined): PlanWords {
  if (spelling === undefined) return { examples: [], box: { of: 'objects', words: [] }, list: [], slips: [] }
  const find = (count: number, more: Parameters<typeof findWords>[1] = {}): readonly string[] =>
    findWords(pool, { with: [spelling], base: true, ...more, count }).words.map(({ word }) => word)
  const examples = find(EXAMPLES, { known: true })
  const objects = find(BOX, { object: true })
  const box =
    objects.length >= FEWEST
      ? ({ of: 'objects', words: objects } as const)
      : ({ of: 'pictures', words: find(BOX, { picture: true }) } as const)
  const shown = new Set(box.words)
  const list = find(LIST, { not: shown })
  const slips = [...find(SLIPS, { kinds: ['doing'], known: true }), ...box.words].slice(0, SLIPS)
  return { examples: examples.length > 0 ? examples : find(EXAMPLES), box, list, slips }
}

export interface PlanSentence {
  readonly text: string
  /** As shown to people. */
  readonly path: string
  readonly page: number
}

/** Keeps the best few sentences: those that show the new thing most often for their length. */
export function createSentenceKeeper(most: number): {
  add(sentence: PlanSentence, hits: number, words: number): void
  readonly kept: readonly PlanSentence[]
} {
  const kept: { readonly sentence: PlanSentence; readonly worth: number }[] = []
  return {
    add(sentence, hits, words) {
      if (kept.some((one) => one.sentence.text === sentence.text)) return
      kept.push({ sentence, worth: hits / words })
      // The first of equals stays, so that the same shelf gives the same plan.
      kept.sort((one, other) => other.worth - one.worth)
      kept.length = Math.min(kept.length, most)
    },
    get kept() {
      return kept.map(({ sentence }) => sentence)
    },
  }
}

export interface LessonPlan {
  readonly item: TaughtItem
  readonly words: PlanWords
  readonly sentences: readonly PlanSentence[]
  /** To be read after the lesson: of the books that can be read then, the one that uses the new thing most. */
  readonly book: PlanBook | undefined
}

export interface PlanBook {
  readonly path: string
  readonly title: string | undefined
  /** Of its running words that can be read after the lesson, 0 to 1. */
  readonly share: number
  /** Running words that use the new thing; 0 where no book that can be read does. */
  readonly uses: number
}

/** The arguments after `battledore` that put the plan on paper: cards and tags, a list, slips, and the book's strips. */
export function toPrintArguments({ item, words, book }: LessonPlan, reader: string, step: string): readonly string[] {
  if (item.kind === 'word') return ['print', 'sight', '--reader', reader, '--words', item.written]
  const all = [...new Set([...words.box.words, ...words.list, ...words.slips, ...words.examples])]
  // A story that names no step of its own is printed for the reader's.
  const story = book !== undefined && book.uses > 0 ? [book.path, '--step', step] : []
  return all.length === 0 ? [] : ['print', 'set', ...story, '--reader', reader, '--words', all.join(', ')]
}
