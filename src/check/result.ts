// What one check of one story says: the one record from which every report is made.

import type { Problem } from '../config/index.ts'
import type { Message, StoryFigures } from '../lint/types.ts'
import type { Accent } from '../phonics/types.ts'
import type { Story } from '../story/types.ts'
import type { Lines } from '../story/lines.ts'

export interface CheckedStory {
  /** As shown to people. */
  readonly path: string
  readonly sequence: { readonly name: string; readonly title: string }
  readonly step: { readonly id: string; readonly title: string }
  readonly accent: Accent
  readonly story: Story
  readonly lines: Lines
  readonly figures: StoryFigures
  /** In order of place. */
  readonly messages: readonly Message[]
}

/** A story that could not be checked, and why, one line each. */
export interface UncheckedStory {
  readonly path: string
  readonly failures: readonly string[]
}

export interface CheckOutcome {
  readonly result: CheckedStory | UncheckedStory
  /** Mistakes in config files, told once for all stories that they touch. */
  readonly configProblems: readonly Problem[]
}

export const isChecked = (result: CheckedStory | UncheckedStory): result is CheckedStory => !('failures' in result)
