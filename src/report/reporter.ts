// What a report is: text for each story as it comes, and at the end.

import type { CheckedStory, UncheckedStory } from '../check/result.ts'
import type { Sum } from './sum.ts'

export type Result = CheckedStory | UncheckedStory

/** Says all of a story when it comes, so that no story need be held. */
export interface LiveReporter {
  story(result: Result): string
  end(sum: Sum): string
}

/** Says all at the end. */
interface WholeReporter {
  readonly story?: undefined
  end(results: readonly Result[]): string
}

export type Reporter = LiveReporter | WholeReporter

export const isLive = (reporter: Reporter): reporter is LiveReporter => reporter.story !== undefined
