// Reads a story with the settings that hold for it, before anything is said about who reads it.

import {
  type ConfigChain,
  type Layer,
  readFrontMatter,
  resolveSettings,
  type Settings,
  type StorySettings,
} from '../config/index.ts'
import type { Rule } from '../lint/types.ts'
import { readStory, type Story, type StoryOptions } from '../story/index.ts'
import type { UncheckedStory } from './result.ts'

export interface TextInput {
  /** As shown to people. */
  readonly path: string
  readonly source: string
  /** The path that config files count from. */
  readonly storyPath: string
  readonly chain: ConfigChain
  readonly flags: Layer
  readonly rules: readonly Rule[]
}

export interface ReadText {
  readonly story: Story
  readonly settings: Settings
  /** The story's own front matter. */
  readonly own: StorySettings
}

/** The built-in sequence that is used where nothing names one. */
export const DEFAULT_SEQUENCE = 'series'

/** Never throws on what a person wrote: a text that cannot be read comes back with its reasons. */
export async function readText(input: TextInput, read = readStory): Promise<ReadText | UncheckedStory> {
  const first = read(input.source)
  const obstacle = first.problems.find(({ severity }) => severity === 'error')
  if (obstacle) return { path: input.path, problems: [{ ...obstacle, path: input.path }] }
  const { chain, storyPath, flags, rules } = input
  const own = await readFrontMatter({ path: input.path, text: input.source }, first.frontMatter, rules)
  const settings = resolveSettings({
    chain,
    storyPath,
    frontMatter: own.layer,
    flags,
    rules,
    defaultSequence: DEFAULT_SEQUENCE,
  })
  const options = toStoryOptions(settings)
  return { story: isPlain(options) ? first : read(input.source, options), settings, own }
}

export function toStoryOptions({ pages, countTitle, countHeadings }: Settings): Required<StoryOptions> {
  return { pages: pages.value, countTitle: countTitle.value, countHeadings: countHeadings.value }
}

const isPlain = ({ pages, countTitle, countHeadings }: StoryOptions): boolean =>
  pages === 'auto' && countTitle === true && countHeadings === true
