// What a rule is, what it is handed, and the messages that come out.

import type { Figures, JudgedWord } from '../reading/types.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import type { Block, Mark, Page, Range, Sentence, Story, Word } from '../story/types.ts'

export type Severity = 'off' | 'warning' | 'error'

/** All that a rule may ask about the story and the child. */
export interface StoryContext {
  readonly story: Story
  readonly sequence: Sequence
  readonly step: string
  readonly knowledge: Knowledge
  readonly accent: string
  /** Names that the story or the folder allows, as written. */
  readonly names: readonly string[]
  /** The parsed front matter. */
  readonly frontMatter: Readonly<Record<string, unknown>>
  /** The verdict on a word of the story. */
  judge(word: Word): JudgedWord
  /** Counted once, when first asked for. */
  figures(): { readonly pages: readonly Figures[]; readonly total: Figures; readonly different: Figures }
  /** The title of a step, for messages: `pink-1`. */
  stepTitle(id: string): string
}

/** What a rule reports. */
export interface Report {
  readonly at: Range
  readonly messageId: string
  /** Fills `{name}` places of the message. */
  readonly data?: Readonly<Record<string, string | number>>
  readonly word?: Word
  /** Blamed letters, as ranges in the word. */
  readonly letters?: readonly (readonly [number, number])[]
  readonly reason?: string
  readonly readableAt?: string | null
  readonly note?: string
  readonly expected?: readonly string[]
  readonly page?: number
}

/** What a rule listens for. The run walks once and calls in order of place. */
export interface RuleListener {
  word?(word: Word, sentence: Sentence): void
  mark?(mark: Mark, sentence: Sentence): void
  sentence?(sentence: Sentence, page: Page): void
  block?(block: Block, page: Page): void
  page?(page: Page): void
  story?(story: Story): void
}

export interface RuleOptionSpec {
  readonly type: 'number' | 'string' | 'boolean' | 'strings'
  readonly default: number | string | boolean | readonly string[]
  readonly description: string
  readonly choices?: readonly string[]
  readonly minimum?: number
  readonly maximum?: number
}

/** A rule is data plus a visitor. */
export interface Rule {
  readonly id: string
  /** One line, for the index. */
  readonly summary: string
  readonly severity: Severity
  readonly options: Readonly<Record<string, RuleOptionSpec>>
  /** Message texts by id, with `{name}` places. */
  readonly messages: Readonly<Record<string, string>>
  create(context: {
    readonly story: StoryContext
    readonly options: Readonly<Record<string, never>>
    report(report: Report): void
  }): RuleListener
}

export interface Message extends Range {
  readonly rule: string
  readonly severity: 'warning' | 'error'
  readonly message: string
  readonly page: number
  readonly word: string | undefined
  readonly reason: string | undefined
  readonly letters: readonly (readonly [number, number])[]
  readonly readableAt: string | null
  readonly note: string | undefined
  readonly url: string
  readonly suggestions: readonly string[]
}
