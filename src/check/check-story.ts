// One whole check of one story: settings → story → verdicts → rules, for the command line, the editor and every other door.

import { type Settings, type StorySettings, toRuleSettings } from '../config/index.ts'
import { createStoryContext } from '../lint/context.ts'
import { toOrdered } from '../lint/message.ts'
import { runRules } from '../lint/run.ts'
import type { Familiarity, FindUnfit, Lists, Message, StoryContext, StoryFigures } from '../lint/types.ts'
import type { Phonics } from '../phonics/types.ts'
import { type Problem, type Sourced, toProblem, toProblemText, toRange } from '../problem/index.ts'
import type { Resources } from '../resources/types.ts'
import { findStep } from '../sequence/index.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import { createLines, findPageNumber, readStory, type Story } from '../story/index.ts'
import type { WordSet } from '../usage/count.ts'
import { isTaggerNeeded } from '../usage/spoken-form.ts'
import type { Suggester } from '../words/index.ts'
import { type ReadText, readText, type TextInput, toStoryOptions } from './read-text.ts'
import type { FreshStory, UncheckedStory } from './result.ts'
import { findWhoReads, toFitness } from './who-reads.ts'

export { DEFAULT_SEQUENCE } from './read-text.ts'

export interface CheckInput extends TextInput {
  readonly resources: Resources
  readonly reader?: ReaderExtra
  /** Whether messages say what could stand there instead; that costs some milliseconds where there is a message. */
  readonly suggest?: boolean
  /** What earlier books of the shelf have used, as `toWordKey` writes it. */
  readonly earlierWords?: WordSet
}

/** A story read and put before its rules, for whoever counts or lints it. */
export interface PreparedStory {
  readonly story: Story
  readonly settings: Settings
  readonly own: StorySettings
  readonly sequence: Sequence
  readonly step: string
  /** What the reader knows beyond or short of the step, the settings of the story among it. */
  readonly reader: ReaderExtra | undefined
  readonly context: StoryContext
  /** Whether the context has a tagger. */
  readonly hasTagger: boolean
}

/** How a story is read and put before its rules: as a whole, or as the next version of one that is held. */
export interface CheckTools {
  readonly read: typeof readStory
  /** @param plain the story as prepared without a tagger */
  isTaggerNeeded(plain: PreparedStory, phonics: Phonics, input: CheckInput): boolean
  run(
    prepared: PreparedStory,
    input: CheckInput,
  ): Promise<{ readonly messages: readonly Message[]; readonly figures: StoryFigures }>
}

const WHOLE: CheckTools = {
  read: readStory,
  isTaggerNeeded: ({ story, context }, { heteronyms }) => isTaggerNeeded(story, heteronyms, context),
  run: async (prepared, input) => {
    const { context, settings } = prepared
    const messages = await suggest(runRules(context, input.rules, toRuleSettings(settings)), prepared, input)
    return { messages, figures: context.figures() }
  },
}

/** Never throws on what a person wrote: what cannot be checked comes back with its reasons. */
export async function checkStory(input: CheckInput): Promise<FreshStory | UncheckedStory> {
  return checkPrepared(await prepareStory(input), input)
}

/** The rest of a check of a story that has been prepared; `input` is what it was prepared with. */
export async function checkPrepared(
  prepared: PreparedStory | UncheckedStory,
  input: CheckInput,
  { run } = WHOLE,
): Promise<FreshStory | UncheckedStory> {
  if ('problems' in prepared) return prepared
  const { story, settings, own, sequence, step, context } = prepared
  const { messages: found, figures } = await run(prepared, input)
  const reported = own.problems.map((problem) => toMessage(problem, FRONT_MATTER))
  const unread = story.problems.map((problem) =>
    toMessage(problem, TEXT, findPageNumber(story, problem.place?.start.offset ?? 0)),
  )
  return {
    path: input.path,
    sequence: { name: sequence.name, title: sequence.title, asked: settings.sequence.value },
    step: { id: step, title: findStep(sequence, step)?.title ?? step },
    accent: context.accent,
    story,
    options: toStoryOptions(settings),
    lines: createLines(input.source),
    figures,
    messages: reported.length + unread.length === 0 ? found : toOrdered([...reported, ...unread, ...found]),
  }
}

async function suggest(
  messages: readonly Message[],
  prepared: PreparedStory,
  input: CheckInput,
): Promise<readonly Message[]> {
  if (!messages.some(({ word, reason }) => word !== undefined && reason !== undefined)) return messages
  const suggester = await findSuggester(prepared, input)
  if (suggester === undefined) return messages
  const { withSuggestions } = await import('./suggest.ts')
  return withSuggestions(messages, prepared.context, { suggester })
}

/** Undefined where nothing is to be proposed. */
export async function findSuggester(
  { sequence, step, reader, settings }: PreparedStory,
  { suggest, resources: { wordHelp } }: CheckInput,
): Promise<Suggester | undefined> {
  if (!suggest || !wordHelp) return undefined
  const help = await wordHelp()
  return help.suggesterFor({ sequence, step, reader, ...toFitness(settings) })
}

/** Reads the story with the settings that hold for it. */
export async function prepareStory(input: CheckInput, tools = WHOLE): Promise<PreparedStory | UncheckedStory> {
  const fail = (...problems: readonly Problem[]): UncheckedStory => ({ path: input.path, problems })
  const read = await readText(input, tools.read)
  if ('problems' in read) return read
  const { story, settings, own } = read
  const who = await findWhoReads(settings, input.resources, input.reader)
  if (!who.ok) return fail(...own.problems, ...who.problems)
  const { sequence, step, reader, phonics } = who.value
  if (step === undefined)
    return fail(...own.problems, ...(hasLostStep(read) ? [] : [toStepMissing(input.path, sequence)]))

  const { earlierWords } = input
  const known = await findKnown(input, settings)
  const reading = {
    phonics,
    sequence,
    step,
    names: settings.names.map(({ value }) => value),
    ...(reader && { reader }),
    ...(earlierWords && { earlierWords }),
    ...known,
  }
  const lists = toLists(own)
  const context = createStoryContext(story, reading, own.raw, lists)
  const plain = { story, settings, own, sequence, step, reader, context, hasTagger: false }
  if (!tools.isTaggerNeeded(plain, phonics, input)) return plain
  const tagger = await input.resources.tagger()
  return { ...plain, context: createStoryContext(story, { ...reading, tagger }, own.raw, lists), hasTagger: true }
}

/** The story's own lists, as rules speak of them. */
function toLists({ layer, introduces, practises }: StorySettings): Lists {
  const toListed = (items: readonly Sourced<string>[]) =>
    items.flatMap(({ value, at }) => (at ? [{ text: value, at: toRange(at) }] : []))
  return { names: toListed(layer.names ?? []), introduces: toListed(introduces), practises: toListed(practises) }
}

/** Loaded only where a rule that asks is on. */
async function findKnown(
  { rules, resources }: CheckInput,
  settings: Settings,
): Promise<{ familiarity?: Familiarity; findUnfit?: FindUnfit }> {
  const isAsked = rules.some(
    ({ id, needs, severity }) => needs !== undefined && (settings.rules[id]?.severity.value ?? severity) !== 'off',
  )
  const help = isAsked ? await resources.wordHelp?.() : undefined
  return help === undefined
    ? {}
    : { familiarity: (word) => help.factsOf(word)?.known, findUnfit: help.fitnessFor(toFitness(settings)).findUnfit }
}

/** Whether the top of the story says a step that could not be read: what is wrong there is reported, and is enough. */
const hasLostStep = ({ story, own }: ReadText): boolean =>
  own.problems.length > 0 && /^\s*step\s*:/m.test(story.frontMatter?.value ?? '')

function toStepMissing(path: string, { steps }: Sequence): Problem {
  const example = steps[0]?.id ?? 'step-1'
  return toProblem({
    code: 'no-step',
    message: `${path} does not say which step its readers have reached`,
    note: `Write \`step: ${example}\` between two lines of --- at its top, or give --step ${example}. \`battledore sequence\` shows the steps.`,
    path,
  })
}

/** The id under which mistakes in front matter are reported: they belong to no rule and cannot be switched off. */
export const FRONT_MATTER = 'front-matter'

/** The same for what is odd about the whole text: another language, a comment that is never closed. */
export const TEXT = 'text'

function toMessage(problem: Problem, rule: string, page = 1): Message {
  return {
    rule,
    severity: problem.severity,
    message: toProblemText(problem),
    start: problem.place?.start.offset ?? 0,
    end: problem.place?.end.offset ?? 0,
    page,
    word: undefined,
    reason: undefined,
    letters: [],
    letterRanges: [],
    readableAt: null,
    note: undefined,
    ruleNote: undefined,
    url: 'README.md',
    suggestions: problem.expected,
    canGo: false,
  }
}
