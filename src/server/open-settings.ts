// The settings that hold for an open story, its own read from the text in the editor.

import { rules } from '../../rules/index.ts'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import {
  type ConfigChain,
  readFrontMatter,
  resolveSettings,
  type Settings,
  type StorySettings,
} from '../config/index.ts'
import type { FrontMatter } from '../story/types.ts'
import type { Host, OpenStory } from './host.ts'

export interface OpenSettings {
  readonly chain: ConfigChain
  readonly own: StorySettings
  readonly settings: Settings
}

export async function findSettings(
  { storyPath, path, source }: OpenStory,
  frontMatter: FrontMatter | undefined,
  host: Pick<Host, 'findChain'>,
): Promise<OpenSettings> {
  const chain = await host.findChain(storyPath)
  const own = await readFrontMatter({ path, text: source }, frontMatter, rules)
  const sources = { chain, storyPath, frontMatter: own.layer, rules, defaultSequence: DEFAULT_SEQUENCE }
  return { chain, own, settings: resolveSettings(sources) }
}
