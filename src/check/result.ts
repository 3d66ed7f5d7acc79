// What one check of one story says: the one record from which every report is made.

import type { Message, StoryFigures } from '../lint/types.ts'
import type { Accent } from '../phonics/types.ts'
import type { Problem } from '../problem/index.ts'
import type { Lines } from '../story/lines.ts'
import type { Page, Story, StoryOptions } from '../story/types.ts'

/** What reports need of a story: plain values, so that a result can be kept in a file or come from another thread. */
interface StoryOutline {
  readonly source: string
  readonly pages: readonly Pick<Page, 'number' | 'start' | 'end'>[]
}

export interface CheckedStory {
  /** As shown to people. */
  readonly path: string
  /** `asked` is the name or path by which it was found. */
  readonly sequence: { readonly name: string; readonly title: string; readonly asked: string }
  readonly step: { readonly id: string; readonly title: string }
  readonly accent: Accent
  readonly story: StoryOutline
  /** How the story was cut into pages and what of it was counted. */
  readonly options: Required<StoryOptions>
  readonly lines: Lines
  readonly figures: StoryFigures
  /** In order of place. */
  readonly messages: readonly Message[]
}

/** A result with the whole story still at hand. */
export interface FreshStory extends CheckedStory {
  readonly story: Story
}

/** The result without the blocks and words of its story, which are most of it: for whoever holds the results of many stories. */
export function toOutlined({ story, ...result }: CheckedStory): CheckedStory {
  const pages = story.pages.map(({ number, start, end }) => ({ number, start, end }))
  return { ...result, story: { source: story.source, pages } }
}

/** A story that could not be checked, and why; a reason may stand in another file, such as its sequence. */
export interface UncheckedStory {
  readonly path: string
  readonly problems: readonly Problem[]
}

export const isChecked = <Checked extends CheckedStory>(result: Checked | UncheckedStory): result is Checked =>
  !('problems' in result)

/** For quiet reports. */
export const withErrorsOnly = <Checked extends CheckedStory>(
  result: Checked | UncheckedStory,
): Checked | UncheckedStory =>
  isChecked(result) ? { ...result, messages: result.messages.filter(({ severity }) => severity === 'error') } : result
