// What a report is: text for each story as it comes, and what stands before and after.

import type { CheckedStory, UncheckedStory } from '../check/result.ts'
import type { Sum } from './sum.ts'

export type Result = CheckedStory | UncheckedStory

/** Says all of a story when it comes, so that no story need be held. */
export interface Reporter {
  story(result: Result): string
  /** What stands before all stories and is known only behind them. A report that has a head cannot be shown before its end. */
  head?(sum: Sum): string
  end(sum: Sum): string
}
