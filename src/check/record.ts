// A result as plain values, to be kept in a file or sent from another thread. The source is not in it: whoever has a
// record has the text that it was made from.

import { createLines } from '../story/lines.ts'
import type { CheckedStory } from './result.ts'

export type StoryRecord = Omit<CheckedStory, 'path' | 'story' | 'lines'> & {
  readonly pages: CheckedStory['story']['pages']
}

export function toRecord({ story, sequence, step, accent, options, figures, messages }: CheckedStory): StoryRecord {
  return {
    sequence,
    step,
    accent,
    options,
    figures,
    messages,
    pages: story.pages.map(({ number, start, end }) => ({ number, start, end })),
  }
}

export function fromRecord({ pages, ...plain }: StoryRecord, path: string, source: string): CheckedStory {
  return { ...plain, path, story: { source, pages }, lines: createLines(source) }
}
