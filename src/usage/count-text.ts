// Counts the words of a text, with the sentence settling a heteronym where that makes a difference to somebody.

import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import type { Story } from '../story/types.ts'
import { countStory, type StoryCount } from './count.ts'
import { createSenseFinder } from './sense.ts'
import { isTaggerNeeded } from './spoken-form.ts'

/** @param isMixed whether the spoken forms of a word are judged differently */
export async function countText(
  story: Story,
  names: readonly string[],
  isMixed: (text: string) => boolean,
  { tagger, phonicsFor }: { tagger(): Promise<Tagger>; phonicsFor(accent: Accent): Phonics },
): Promise<StoryCount> {
  // Which words have several spoken forms is the same in every accent.
  const { heteronyms } = phonicsFor('general-american')
  const isNeeded = isTaggerNeeded(story, heteronyms, { judge: ({ text }) => ({ unsettled: isMixed(text) }) })
  return countStory(story, createSenseFinder(story, names, heteronyms, isNeeded ? await tagger() : undefined))
}
