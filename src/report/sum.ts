// What is said of all stories together, added up as they come, so that none of them need be held.

import { toStraight } from '../apostrophe.ts'
import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { JudgedBy } from './explain-command.ts'

/** Counts over the stories so far. */
export interface Sum {
  /** Those that could be checked. */
  readonly stories: number
  readonly failed: number
  readonly pages: number
  readonly words: number
  readonly unread: number
  readonly errors: number
  readonly warnings: number
  /** Stories of which something is said. */
  readonly withMessages: number
  /** The first word whose letters have something to explain, with the step of its story and what it was judged by. */
  readonly explained: ({ readonly word: string; readonly step: string } & JudgedBy) | undefined
}

export const NO_STORIES: Sum = {
  ...{ stories: 0, failed: 0, pages: 0, words: 0, unread: 0, errors: 0, warnings: 0, withMessages: 0 },
  explained: undefined,
}

export function addStory(sum: Sum, result: CheckedStory | UncheckedStory): Sum {
  if (!isChecked(result)) return { ...sum, failed: sum.failed + 1 }
  const { figures, story, messages, step, sequence, accent } = result
  const errors = messages.filter(({ severity }) => severity === 'error').length
  const word = sum.explained === undefined ? messages.find(isExplained)?.word : undefined
  return {
    stories: sum.stories + 1,
    failed: sum.failed,
    pages: sum.pages + story.pages.length,
    words: sum.words + figures.total.words,
    unread: sum.unread + figures.total.unreadable,
    errors: sum.errors + errors,
    warnings: sum.warnings + messages.length - errors,
    withMessages: sum.withMessages + (messages.length > 0 ? 1 : 0),
    explained: word === undefined ? sum.explained : { word, step: step.id, asked: sequence.asked, accent },
  }
}

/** Digits, other scripts and abbreviations have no letters to explain. */
const isExplained = ({ word, reason }: Message): boolean =>
  /^[a-z'-]+$/i.test(toStraight(word ?? '')) &&
  reason !== undefined &&
  reason !== 'unknown-word' &&
  reason !== 'misspelt'
