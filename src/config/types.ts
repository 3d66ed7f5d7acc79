// What configuration is made of: values with their origin, and layers of them.

import type { OptionValue, Severity } from '../lint/types.ts'
import type { Accent } from '../phonics/types.ts'
import type { Problem, Sourced } from '../problem/index.ts'
import type { StoryOptions } from '../story/types.ts'

type Pages = NonNullable<StoryOptions['pages']>
type ReducedVowels = 'accept' | 'flag'

/** What one place says about one rule; what it leaves out is as before. */
export interface RuleLayer {
  readonly severity?: Sourced<Severity>
  readonly options: Readonly<Record<string, Sourced<OptionValue>>>
}

/** What one place says: a config file, an override in it, front matter, or the flags. */
export interface Layer {
  readonly sequence?: Sourced<string>
  readonly step?: Sourced<string>
  readonly accent?: Sourced<Accent>
  readonly pages?: Sourced<Pages>
  readonly countTitle?: Sourced<boolean>
  readonly countHeadings?: Sourced<boolean>
  readonly reducedVowels?: Sourced<ReducedVowels>
  /** 0 to 1 */
  readonly readableShare?: Sourced<number>
  readonly paper?: Sourced<'a4' | 'letter'>
  readonly names?: readonly Sourced<string>[]
  readonly sightWords?: readonly Sourced<string>[]
  readonly unfitWords?: readonly Sourced<string>[]
  readonly fitWords?: readonly Sourced<string>[]
  readonly rules?: Readonly<Record<string, RuleLayer>>
}

export interface Override {
  readonly files: readonly string[]
  /** Whether a path, relative to the folder of the config that is read for it, is meant. */
  matches(path: string): boolean
  readonly layer: Layer
}

/** A file's text and its path as shown to people. */
export interface Source {
  readonly path: string
  readonly text: string
}

export interface ConfigFile {
  /** The path to read by. */
  readonly path: string
  readonly source: Source
  readonly isRoot: boolean
  /** Paths of the files it builds on, as `read` takes them. */
  readonly extends: readonly Sourced<string>[]
  readonly layer: Layer
  readonly overrides: readonly Override[]
  readonly ignore: readonly Sourced<string>[]
  /** The pattern that leaves out a path, relative to the folder of the config that is read for it. */
  findIgnoring(path: string): Sourced<string> | undefined
  readonly problems: readonly Problem[]
}

/** The front matter of one story. */
export interface StorySettings {
  readonly layer: Layer
  readonly title?: Sourced<string>
  readonly order?: Sourced<number>
  readonly introduces: readonly Sourced<string>[]
  readonly practises: readonly Sourced<string>[]
  /** All keys as written, those of other tools among them. */
  readonly raw: Readonly<Record<string, unknown>>
  readonly problems: readonly Problem[]
}

export interface ResolvedRule {
  readonly severity: Sourced<Severity>
  readonly options: Readonly<Record<string, Sourced<OptionValue>>>
}

/** All values that hold for one story. Undefined: the sequence decides, or the caller. */
export interface Settings {
  /** A name, or a path as the reader of config files takes it. */
  readonly sequence: Sourced<string>
  readonly step: Sourced<string | undefined>
  readonly accent: Sourced<Accent | undefined>
  readonly pages: Sourced<Pages>
  readonly countTitle: Sourced<boolean>
  readonly countHeadings: Sourced<boolean>
  readonly reducedVowels: Sourced<ReducedVowels | undefined>
  /** 0 to 1 */
  readonly readableShare: Sourced<number>
  readonly paper: Sourced<'a4' | 'letter'>
  readonly names: readonly Sourced<string>[]
  readonly sightWords: readonly Sourced<string>[]
  /** Never proposed, beside those of the built-in list; and those of it that may be. */
  readonly unfitWords: readonly Sourced<string>[]
  readonly fitWords: readonly Sourced<string>[]
  readonly rules: Readonly<Record<string, ResolvedRule>>
}
