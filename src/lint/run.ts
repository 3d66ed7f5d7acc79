// The one walk over a story: every rule is handed what it listens for, and a word's faults go to the rules that claim them.

import type { Sentence, Word } from '../story/types.ts'
import { toAddition } from './additions.ts'
import { compareMessages, moveMessage, toMessage } from './message.ts'
import { toOptions } from './settings.ts'
import { readSwitches } from './switches/directives.ts'
import type {
  Fault,
  FaultCode,
  Message,
  Report,
  Rule,
  RuleListener,
  RuleSettings,
  StoryContext,
  WordFault,
} from './types.ts'
import { createFaultFinder } from './word-faults.ts'

type FaultHandler = NonNullable<RuleListener['fault']>

interface Listeners {
  readonly faults: ReadonlyMap<FaultCode, FaultHandler>
  readonly word: readonly NonNullable<RuleListener['word']>[]
  readonly mark: readonly NonNullable<RuleListener['mark']>[]
  readonly sentence: readonly NonNullable<RuleListener['sentence']>[]
  readonly block: readonly NonNullable<RuleListener['block']>[]
  readonly page: readonly NonNullable<RuleListener['page']>[]
  readonly story: readonly NonNullable<RuleListener['story']>[]
}

interface Outbox {
  readonly messages: Message[]
  /** The faults that the word in hand has beside the one that is being told. */
  further: readonly Fault[]
}

interface Made {
  readonly rule: Rule
  readonly listener: RuleListener
}

/**
 * Runs rules over a story and gives their messages in order of place, without those that a switch in a comment silences.
 * Rules that are set to `off` are not made.
 * A word has one message at most from the rules that claim faults: the first fault that some rule speaks for.
 */
export function runRules(
  context: StoryContext,
  rules: readonly Rule[],
  settings: RuleSettings = {},
): readonly Message[] {
  const outbox: Outbox = { messages: [], further: [] }
  const made = makeRules(context, rules, settings, outbox)
  const listeners = toListeners(made)
  walk(context, listeners, createFaultReporter(context, listeners, outbox))
  return applySwitches(context, rules, made, outbox.messages).sort(compareMessages)
}

function makeRules(
  context: StoryContext,
  rules: readonly Rule[],
  settings: RuleSettings,
  outbox: Outbox,
): readonly Made[] {
  return rules.flatMap((rule) => {
    const setting = settings[rule.id]
    const severity = setting?.severity ?? rule.severity
    if (severity === 'off') return []
    const report = (found: Report): void => {
      outbox.messages.push(toMessage(rule, found.isError ? 'error' : severity, found, context, outbox.further))
    }
    return [{ rule, listener: rule.create({ story: context, options: toOptions(rule, setting?.options), report }) }]
  })
}

/**
 * Offers the faults of a word to the rules that claim them, until one of them says something. What is said of a word is
 * said again wherever the story has the same word in the same sense: a rule is asked once for each.
 */
function createFaultReporter(
  context: StoryContext,
  listeners: Listeners,
  outbox: Outbox,
): (word: Word, sentence: Sentence) => void {
  const findFaults = createFaultFinder(context)
  const known = new Map<string, readonly Message[]>()
  return (word, sentence) => {
    const before = known.get(word.text)
    if (before !== undefined) {
      for (const message of before) outbox.messages.push(moveMessage(message, word))
      return
    }
    const judged = word.form === 'word' ? context.judge(word, sentence) : undefined
    const from = outbox.messages.length
    reportFaults(findFaults(word, sentence), { word, sentence, judged }, listeners, outbox)
    if (judged === undefined || !context.isAlwaysPlain(word.text) || judged.verdict.guessed) return
    // A guessed word is told once, where the story first has it; what stands elsewhere than at its word cannot be moved.
    const said = outbox.messages.slice(from)
    if (said.every(({ start, end }) => start === word.start && end === word.end)) known.set(word.text, said)
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
  for (const [index, fault] of faults.entries()) {
    const handler = handlers.get(fault.code)
    if (handler === undefined) continue
    outbox.further = faults.slice(index + 1).filter((one) => handlers.has(one.code) && !isNoted(one))
    handler({ ...fault, ...found })
    if (outbox.messages.length > before) break
  }
  outbox.further = []
}

/** Leaves out what switches silence, and lets the rules on switches speak. They come last and cannot be silenced themselves. */
function applySwitches(
  context: StoryContext,
  rules: readonly Rule[],
  made: readonly Made[],
  messages: Message[],
): Message[] {
  if (context.story.comments.length === 0) return messages
  const switches = readSwitches(
    context.story,
    rules.map(({ id }) => id),
  )
  const { kept, unused, problems } = switches.filter(
    messages.splice(0),
    made.map(({ rule }) => rule.id),
  )
  for (const problem of [...problems, ...unused]) {
    made.find(({ rule }) => rule.id === problem.rule)?.listener.switchProblem?.(problem)
  }
  return [...kept, ...messages]
}

function walk(
  context: StoryContext,
  listeners: Listeners,
  reportFaults: (word: Word, sentence: Sentence) => void,
): void {
  const wantsFaults = listeners.faults.size > 0
  for (const page of context.story.pages) {
    for (const listen of listeners.page) listen(page)
    for (const block of page.blocks) {
      for (const listen of listeners.block) listen(block, page)
      for (const sentence of block.sentences) {
        for (const listen of listeners.sentence) listen(sentence, page)
        for (const word of sentence.words) {
          if (wantsFaults) reportFaults(word, sentence)
          for (const listen of listeners.word) listen(word, sentence)
        }
        if (listeners.mark.length === 0) continue
        for (const mark of sentence.marks) for (const listen of listeners.mark) listen(mark, sentence)
      }
    }
  }
  for (const listen of listeners.story) listen(context.story)
}

function toListeners(made: readonly Made[]): Listeners {
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
