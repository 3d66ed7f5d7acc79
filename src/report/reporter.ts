// What a report is: text for each story as it comes, or all at the end.

import type { CheckedStory, UncheckedStory } from '../check/result.ts'

export type Result = CheckedStory | UncheckedStory

export interface Reporter {
  /** What is said of one story; missing where all is said at the end. */
  story?(result: Result): string
  end(results: readonly Result[]): string
}
