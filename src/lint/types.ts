// What a rule is, what it is handed, and the messages that come out.

import type { Accent } from '../phonics/types.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import type { Block, Mark, Page, Range, Sentence, Story, Word } from '../story/types.ts'
import type { StoryCount, WordSet } from '../usage/count.ts'
import type { Figures, JudgedWord, Reason } from '../verdict/types.ts'
import type { UnfitKind } from '../words/fitness.ts'
import type { FaultCode, MessageReason } from './reasons.ts'
import type { SwitchProblem } from './switches/directives.ts'

export type Severity = 'off' | 'warning' | 'error'

/** An item of a list of the front matter. */
export interface Listed {
  /** As written. */
  readonly text: string
  readonly at: Range
}

/** Lists by key, as whoever read the front matter found them. */
export type Lists = Readonly<Record<string, readonly Listed[]>>

/** All that a rule may ask about the story and the child. */
export interface StoryContext {
  readonly story: Story
  readonly sequence: Sequence
  /** The id of the step that the child has reached: `pink-2`. */
  readonly step: string
  readonly knowledge: Knowledge
  readonly accent: Accent
  /** Names that the story or the folder allows, as written. */
  readonly names: readonly string[]
  /** The parsed front matter. */
  readonly frontMatter: Readonly<Record<string, unknown>>
  /** Its lists with the place of each item, where they are known. */
  readonly lists: Lists
  /** The verdict on a word of the story; the sentence chooses among the spoken forms of a heteronym. */
  judge(word: Word, sentence: Sentence): JudgedWord
  /** Whether a text has the same verdict wherever it stands: one spoken form, and in no name of several words. */
  isAlwaysPlain(text: string): boolean
  /** How often each word runs and where it first stands. Counted once, when first asked for. */
  count(): StoryCount
  /** The same for some pages, or parts of pages, of the story. */
  countIn(pages: readonly Page[]): StoryCount
  /** Counted once, when first asked for. */
  figures(): StoryFigures
  /** Words that earlier books of the shelf have used, as `toWordKey` writes them; undefined where there is no shelf. */
  readonly earlierWords: WordSet | undefined
  /** How well small children know a word; undefined where the program has no data on words. */
  readonly familiarity: Familiarity | undefined
  /** Undefined where the program has no data on words. */
  readonly findUnfit: FindUnfit | undefined
  /** The words that may have been meant by one that the dictionary lacks, likeliest first: those that the child can read before others. */
  findSlips(text: string): readonly string[]
  /** The words that the story writes as names; found once, when first asked for. */
  likelyNames(): ReadonlySet<string>
}

/**
 * How well small children know a word: 3 on a list of words for grades 1 to 3, 2 for grade 4, 1 among the 6,000 most used, 0 on
 * none; undefined for a word that the data does not hold.
 */
export type Familiarity = (word: string) => 0 | 1 | 2 | 3 | undefined

/** Why a word is unfit for children, and the base word that makes it so; undefined for a fit word. */
export type FindUnfit = (word: string) => { readonly base: string; readonly kind: UnfitKind } | undefined

/** Counts per page in order, over all running words, and over the different words. */
export interface StoryFigures {
  readonly pages: readonly Figures[]
  readonly total: Figures
  readonly different: Figures
}

export interface Fault {
  readonly code: FaultCode
  /** The reason of the verdict, where the fault is one. */
  readonly reason?: Reason
}

/** A fault as the rule that claims it is handed it. */
export interface WordFault extends Fault {
  readonly word: Word
  readonly sentence: Sentence
  /** Undefined for a word that is not judged: a numeral, or one in foreign letters. */
  readonly judged: JudgedWord | undefined
}

/** The `{name}` places of a message text: `a {b} c {d}` has `'b' | 'd'`. */
type Places<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}` ? Name | Places<Rest> : never

export type MessageTexts = Readonly<Record<string, string>>

/** What a rule reports. The message id and the data that fills its places are checked when the rule is compiled. */
export type Report<Texts extends MessageTexts = MessageTexts> = ReportBody &
  { readonly [Id in keyof Texts & string]: { readonly messageId: Id } & ReportData<Places<Texts[Id]>> }[keyof Texts &
    string]

type ReportData<Name extends string> = [Name] extends [never]
  ? { readonly data?: Readonly<Record<string, string | number>> }
  : { readonly data: Readonly<Record<Name, string | number>> }

interface ReportBody {
  readonly at: Range
  readonly word?: Word
  /** Blamed letters, as ranges in the word. */
  readonly letters?: readonly (readonly [number, number])[]
  readonly reason?: MessageReason
  readonly readableAt?: string | null
  /** Why it matters here and what to do next. */
  readonly note?: string
  /** What could stand there instead. */
  readonly expected?: readonly string[]
  readonly page?: number
  /** An error also where the rule only warns: a word that no child can read. */
  readonly isError?: true
  /** Reported only where the story first has the word, as it is written. */
  readonly isOnce?: true
}

/**
 * What a rule listens for. The run walks once and calls in order of place.
 *
 * What a rule says of a word, mark, sentence, block or page may depend on that, on verdicts and settings, on the figures of
 * that page; never on what it was handed before, nor on lists of the front matter. What stands on the whole story or on its
 * lists is said by `story`. So an editor can keep what was said of the text that did not change.
 */
export interface RuleListener {
  /**
   * A fault that the rule claims. Where it reports nothing, the word's next fault is tried. What it reports may depend on
   * the word, its verdict, and the names and settings that hold for the story, never on the place or on what else stands in
   * the story: it is asked once for each different word of all stories that share them.
   */
  fault?(fault: WordFault): void
  word?(word: Word, sentence: Sentence): void
  mark?(mark: Mark, sentence: Sentence): void
  sentence?(sentence: Sentence, page: Page): void
  block?(block: Block, page: Page): void
  page?(page: Page): void
  /** Called when all pages have been walked. */
  story?(story: Story): void
  /** A switch that is misspelt or silenced nothing, told to the rule that it names; known only when all rules have spoken. */
  switchProblem?(problem: SwitchProblem): void
}

interface OptionDescription {
  readonly description: string
}

/** One option of a rule, as data: docs, checks, schema and types come from it. */
export type RuleOptionSpec = OptionDescription &
  (
    | { readonly type: 'number'; readonly default: number; readonly minimum?: number; readonly maximum?: number }
    | { readonly type: 'string'; readonly default: string; readonly choices?: readonly string[] }
    | { readonly type: 'boolean'; readonly default: boolean }
    | { readonly type: 'strings'; readonly default: readonly string[] }
  )

export type OptionSpecs = Readonly<Record<string, RuleOptionSpec>>
export type OptionValue = number | string | boolean | readonly string[]

/** The values that a rule is handed: every option that it names, given or by default. */
export type OptionValues<Specs extends OptionSpecs> = { readonly [Name in keyof Specs]: OptionValueOf<Specs[Name]> }

type OptionValueOf<Spec extends RuleOptionSpec> = Spec extends { readonly type: 'number' }
  ? number
  : Spec extends { readonly type: 'boolean' }
    ? boolean
    : Spec extends { readonly type: 'strings' }
      ? readonly string[]
      : Spec extends { readonly choices: readonly (infer Choice)[] }
        ? Choice
        : string

/** A rule is data plus a visitor. Write one with `defineRule`. */
export interface Rule<Specs extends OptionSpecs = OptionSpecs, Texts extends MessageTexts = MessageTexts> {
  readonly id: string
  /** One line, for the index. */
  readonly summary: string
  readonly severity: Severity
  /** The faults of a word that this rule speaks for. */
  readonly claims?: readonly FaultCode[]
  readonly options: Specs
  /** What must be loaded before the rule can speak. */
  readonly needs?: 'familiarity' | 'fitness'
  /** Message texts by id, with `{name}` places. */
  readonly messages: Texts
  create(context: {
    readonly story: StoryContext
    readonly options: OptionValues<Specs>
    report(report: Report<Texts>): void
  }): RuleListener
}

/** How a rule is set: what is missing stays as the rule has it. */
export interface RuleSetting {
  readonly severity?: Severity
  readonly options?: Readonly<Record<string, OptionValue>>
}

/** Settings by rule id. */
export type RuleSettings = Readonly<Record<string, RuleSetting>>

/** All messages have all fields: V8 copies such an object ten times as fast as one that gets a field more. */
export interface Message extends Range {
  readonly rule: string
  readonly severity: 'warning' | 'error'
  readonly message: string
  readonly page: number
  readonly word: string | undefined
  readonly reason: string | undefined
  /** Blamed letters, as ranges in the word. */
  readonly letters: readonly (readonly [number, number])[]
  /** The same letters, as ranges in the source. */
  readonly letterRanges: readonly Range[]
  readonly readableAt: string | null
  readonly note: string | undefined
  /** The note as the rule has it, where a search for other words has put its own in its place. */
  readonly ruleNote: string | undefined
  readonly url: string
  readonly suggestions: readonly string[]
  /** That nothing could stand there instead, and the sentence does without the word. */
  readonly canGo: boolean
}
