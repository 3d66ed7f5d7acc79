// The rules of one run, made for a story: what each listens for, and what they have said so far.

import type { Block, Page, Sentence, Story, Word } from '../story/types.ts'
import type { JudgedWord } from '../verdict/types.ts'
import { toAddition } from './additions.ts'
import { type BesideReport, moveMessage, toMessage } from './message.ts'
import type { FaultCode } from './reasons.ts'
import { recallSaid, type SaidBefore } from './said-before.ts'
import { toOptions } from './settings.ts'
import type { Fault, Message, Report, Rule, RuleListener, RuleSettings, StoryContext, WordFault } from './types.ts'
import { createFaultFinder, type IsFirst } from './word-faults.ts'

type FaultHandler = NonNullable<RuleListener['fault']>
type WordStep = (word: Word, sentence: Sentence) => void

interface Listeners {
  readonly faults: ReadonlyMap<FaultCode, FaultHandler>
  readonly word: readonly WordStep[]
  readonly mark: readonly NonNullable<RuleListener['mark']>[]
  readonly sentence: readonly NonNullable<RuleListener['sentence']>[]
  readonly block: readonly NonNullable<RuleListener['block']>[]
  readonly page: readonly NonNullable<RuleListener['page']>[]
  readonly story: readonly NonNullable<RuleListener['story']>[]
}

interface Outbox {
  messages: Message[]
  /** Of the word in hand, what the note of its fault is to tell. */
  beside: BesideReport
}

interface MadeRule {
  readonly rule: Rule
  readonly listener: RuleListener
}

const NONE: BesideReport = { further: [] }

/** Rules that are made, each way of handing them something, and their messages in the order in which they said them. */
export interface MadeRules {
  readonly all: readonly MadeRule[]
  page(page: Page): void
  block(block: Block, page: Page): void
  sentence(sentence: Sentence, page: Page): void
  /** What is asked about each word, one after another. */
  readonly wordSteps: readonly WordStep[]
  marks(sentence: Sentence): void
  story(story: Story): void
  /** What was said since this was last called. */
  take(): Message[]
}

/** Rules that are set to `off` are not made. */
export function makeRules(
  context: StoryContext,
  rules: readonly Rule[],
  settings: RuleSettings,
  isFirst: IsFirst,
): MadeRules {
  const outbox: Outbox = { messages: [], beside: NONE }
  const all = rules.flatMap((rule) => {
    const setting = settings[rule.id]
    const severity = setting?.severity ?? rule.severity
    if (severity === 'off') return []
    const report = (found: Report): void => {
      if (found.isOnce && !isFirst(`${rule.id} ${found.word?.text}`)) return
      outbox.messages.push(toMessage(rule, found.isError ? 'error' : severity, found, context, outbox.beside))
    }
    return [{ rule, listener: rule.create({ story: context, options: toOptions(rule, setting?.options), report }) }]
  })
  const listeners = toListeners(all)
  const saidBefore = recallSaid(context, rules, settings)
  const tools = { listeners, outbox, isFirst, saidBefore }
  const faultSteps = listeners.faults.size > 0 ? [createFaultReporter(context, tools)] : []
  return {
    all,
    page: (page) => {
      for (const listen of listeners.page) listen(page)
    },
    block: (block, page) => {
      for (const listen of listeners.block) listen(block, page)
    },
    sentence: (sentence, page) => {
      for (const listen of listeners.sentence) listen(sentence, page)
    },
    wordSteps: [...faultSteps, ...listeners.word],
    marks: (sentence) => {
      if (listeners.mark.length === 0) return
      for (const mark of sentence.marks) for (const listen of listeners.mark) listen(mark, sentence)
    },
    story: (story) => {
      for (const listen of listeners.story) listen(story)
    },
    take: () => {
      const said = outbox.messages
      outbox.messages = []
      return said
    },
  }
}

interface FaultTools {
  readonly listeners: Listeners
  readonly outbox: Outbox
  readonly isFirst: IsFirst
  readonly saidBefore: SaidBefore
}

/**
 * Offers the faults of a word to the rules that claim them, until one of them says something. What is said of a word is
 * said again wherever this story or the next has the same word in the same sense: a rule is asked once for each.
 */
function createFaultReporter(context: StoryContext, { listeners, outbox, isFirst, saidBefore }: FaultTools): WordStep {
  const findFaults = createFaultFinder(context, isFirst)
  const known = new Map<string, readonly Message[]>()
  const ask = (word: Word, sentence: Sentence, judged: JudgedWord | undefined, faults: readonly Fault[]) => {
    const from = outbox.messages.length
    reportFaults(faults, { word, sentence, judged }, listeners, outbox)
    return outbox.messages.splice(from)
  }
  return (word, sentence) => {
    const before = known.get(word.text)
    if (before !== undefined) {
      for (const message of before) outbox.messages.push(moveMessage(message, word))
      return
    }
    const judged = word.form === 'word' ? context.judge(word, sentence) : undefined
    const faults = findFaults(word, sentence)
    const earlier = faults.length === 0 || judged === undefined ? undefined : saidBefore.find(judged, faults)
    const said = earlier?.map((message) => moveMessage(message, word)) ?? ask(word, sentence, judged, faults)
    outbox.messages.push(...said)
    // What stands elsewhere than at its word cannot be moved.
    if (judged === undefined || !said.every(({ start, end }) => start === word.start && end === word.end)) return
    if (faults.length > 0 && earlier === undefined) saidBefore.keep(judged, faults, said)
    // A guessed word is told once, where the story first has it.
    if (context.isAlwaysPlain(word.text) && !judged.verdict.guessed) known.set(word.text, said)
  }
}

function reportFaults(
  faults: readonly Fault[],
  found: Pick<WordFault, 'word' | 'sentence' | 'judged'>,
  { faults: handlers }: Listeners,
  outbox: Outbox,
): void {
  const before = outbox.messages.length
  const { word, judged } = found
  const isToAdd =
    faults.length > 1 &&
    judged !== undefined &&
    !judged.verdict.readable &&
    judged.readableAt === null &&
    toAddition(word.text, judged.verdict.reasons) !== undefined
  // What the note tells to add need not be told again.
  const isNoted = ({ reason }: Fault) => isToAdd && reason !== undefined && reason.taughtAt === undefined
  // That nobody knows how a name is said, its own message says.
  const isSaid = (first: Fault, { code }: Fault) => first.code === 'unlisted-name' && code === 'unsure'
  for (const [index, fault] of faults.entries()) {
    const handler = handlers.get(fault.code)
    if (handler === undefined) continue
    const further = faults
      .slice(index + 1)
      .filter((one) => handlers.has(one.code) && !isNoted(one) && !isSaid(fault, one))
    outbox.beside = { further, judged }
    handler({ ...fault, ...found })
    if (outbox.messages.length > before) break
  }
  outbox.beside = NONE
}

function toListeners(made: readonly MadeRule[]): Listeners {
  const pick = <Name extends keyof RuleListener>(name: Name): NonNullable<RuleListener[Name]>[] =>
    made.flatMap(({ listener }) => listener[name] ?? [])
  const faults = made.flatMap(({ rule, listener }) =>
    (rule.claims ?? []).flatMap((code) => (listener.fault === undefined ? [] : [[code, listener.fault] as const])),
  )
  return {
    faults: new Map(faults),
    word: pick('word'),
    mark: pick('mark'),
    sentence: pick('sentence'),
    block: pick('block'),
    page: pick('page'),
    story: pick('story'),
  }
}
