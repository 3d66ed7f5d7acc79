// What the language server needs from outside: checks, settings and words, handed in so that it touches no files itself.

import type { PreparedStory } from '../check/check-story.ts'
import type { CheckedStory, UncheckedStory } from '../check/result.ts'
import type { ConfigChain } from '../config/index.ts'
import type { WordSource } from '../finder/readable-words.ts'
import type { Resources } from '../resources/types.ts'

export interface OpenStory {
  /** As shown to people. */
  readonly path: string
  /** Absolute, with forward slashes. */
  readonly storyPath: string
  readonly source: string
}

export interface Host {
  /** Undefined where a config leaves the story out. */
  check(story: OpenStory): Promise<CheckedStory | UncheckedStory | undefined>
  prepare(story: OpenStory): Promise<PreparedStory | UncheckedStory>
  findChain(storyPath: string): Promise<ConfigChain>
  /** Forgets configs and sequences where one has changed, and says whether it did. */
  refresh(): boolean
  readonly resources: Resources
  /** Whether a file is left out of every check, by name or by an ignore file. */
  isLeftOut(storyPath: string): Promise<boolean>
  /** Names of the built-in sequences. */
  builtIns(): readonly string[]
  /** Loaded when the first word is proposed. */
  words(): WordSource
  /** The absolute path of a document; one that is not saved yet gets a path in the folder of the server. */
  toPath(uri: string): string
  /** The other way, for a path as shown in messages. */
  toUri(path: string): string
  /** As shown to people. */
  show(path: string): string
  /** Milliseconds; only differences count. */
  now(): number
}
