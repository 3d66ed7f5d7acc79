// A story as it is open on the page: what was asked, and what came of it so far.

import type { CheckInput, PreparedStory } from '../../check/check-story.ts'
import type { HeldCheck } from '../../check/held-check.ts'
import type { FreshStory, UncheckedStory } from '../../check/result.ts'
import type { Layer } from '../../config/index.ts'
import type { Problem } from '../../problem/index.ts'
import type { ReaderExtra } from '../../sequence/reader.ts'

export interface FoundReader {
  readonly name: string
  /** Sequence, step and accent of the reader. */
  readonly layer: Layer
  readonly extra: ReaderExtra
  /** Who is read for, and the caution that goes with it. */
  readonly notice: string
}

export interface OpenStory {
  /** For whom it is read; undefined where nobody is chosen. */
  readonly reader: FoundReader | undefined
  /** Undefined where the chosen reader cannot be read. */
  readonly input: CheckInput | undefined
  readonly prepared: PreparedStory | UncheckedStory
  /** Mistakes of the settings of the folder. */
  readonly told: readonly Problem[]
  checked: Promise<FreshStory | UncheckedStory> | undefined
  /** What was said of its versions. */
  readonly held: HeldCheck
}

export interface KeptStory {
  readonly text: string
  readonly reader: string | undefined
  readonly held: HeldCheck
  readonly opened: Promise<OpenStory>
}
