// Counts the words of a text, with the sentence settling a heteronym where that makes a difference to somebody.

import { createSenseFinder } from '../lint/sense.ts'
import { isTaggerNeeded } from '../lint/spoken-form.ts'
import { countStory, type StoryCount } from '../shelf/index.ts'
import type { Story } from '../story/types.ts'
import type { Resources } from './resources.ts'

/** @param isMixed whether the spoken forms of a word are judged differently */
export async function countText(
  story: Story,
  names: readonly string[],
  isMixed: (text: string) => boolean,
  { tagger }: Pick<Resources, 'tagger'>,
): Promise<StoryCount> {
  const isNeeded = isTaggerNeeded(story, { judge: ({ text }) => ({ unsettled: isMixed(text) }) })
  return countStory(story, createSenseFinder(story, names, isNeeded ? await tagger() : undefined))
}
