// About this story: its settings by name, what each can be, and the changes of them.

import type { Problem } from '../../../problem/index.ts'

type TextKey = 'title' | 'sequence' | 'step' | 'accent' | 'order'
export type ListKey = 'names' | 'sight words' | 'introduces' | 'practises'
export type SettingKey = TextKey | ListKey

export interface Setting<Value> {
  readonly value: Value
  /** Whether the story says it itself; else `from` does: a config of the folder, the reader, or what holds by default. */
  readonly isOwn: boolean
  /** Empty where nobody says anything. */
  readonly from: string
  /** Of a list: what the folder says beside the story's own items. */
  readonly inherited?: readonly string[]
  /** What is wrong with what the story says, with the nearest. */
  readonly problem: Problem | null
}

export interface Choice {
  /** To be put in by `set`. A sequence of one's own goes by its path in the folder; `set` writes it as seen from the story. */
  readonly value: string
  readonly title: string
  /** Of a sequence that is a file of this folder. */
  readonly path?: string
}

export interface ReaderChoice {
  /** For `StoryText.reader`. */
  readonly path: string
  readonly name: string
  /** The id of the step. */
  readonly step: string | null
  readonly isGroup: boolean
  /** Why it cannot be read; such a reader cannot be chosen. */
  readonly problems: readonly Problem[]
}

export interface About {
  readonly version: number
  readonly title: Setting<string | null>
  readonly sequence: Setting<string>
  readonly step: Setting<string | null>
  readonly accent: Setting<string>
  readonly order: Setting<string | null>
  readonly names: Setting<readonly string[]>
  readonly 'sight words': Setting<readonly string[]>
  readonly introduces: Setting<readonly string[]>
  readonly practises: Setting<readonly string[]>
  readonly choices: {
    /** Built-in ones by name, then those of the folder by title. */
    readonly sequences: readonly Choice[]
    /** Of the sequence that holds. */
    readonly steps: readonly Choice[]
    readonly accents: readonly Choice[]
  }
  /** Whether the settings can be changed from here: not where their YAML is broken. */
  readonly isOpen: boolean
  readonly problems: readonly Problem[]
}

/** `value: null` takes the line away, so that the folder decides again. */
export type AboutEdit =
  | { readonly key: TextKey; readonly value: string | null }
  | { readonly key: ListKey; readonly add: string }
  | { readonly key: ListKey; readonly remove: string }
