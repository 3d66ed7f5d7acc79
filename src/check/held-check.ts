// Checks the versions of one story, one after another, as an editor needs it: what an edit does not touch is not checked again.

import { toRuleSettings } from '../config/index.ts'
import type { Finish } from '../lint/held/echo.ts'
import { createHeldRun } from '../lint/held/held-run.ts'
import { createHeldStory } from '../story/held.ts'
import { homesOf } from '../story/held-pages.ts'
import {
  type CheckInput,
  type CheckTools,
  checkPrepared,
  findSuggester,
  type PreparedStory,
  prepareStory,
} from './check-story.ts'
import type { FreshStory, UncheckedStory } from './result.ts'
import { toFitness } from './who-reads.ts'

/**
 * Says what `checkStory` and `prepareStory` say, the places of all words included. All of the input may change from call to
 * call; only where nothing but the source does is a check cheap. Calls are answered one after another.
 */
export interface HeldCheck {
  check(input: CheckInput): Promise<FreshStory | UncheckedStory>
  prepare(input: CheckInput): Promise<PreparedStory | UncheckedStory>
}

export function createHeldCheck(): HeldCheck {
  const tools = createTools()
  const queue = createQueue()
  let last: { readonly input: CheckInput; readonly prepared: PreparedStory | UncheckedStory } | undefined
  const prepare = async (input: CheckInput): Promise<PreparedStory | UncheckedStory> => {
    if (last === undefined || !isSameInput(last.input, input))
      last = { input, prepared: await prepareStory(input, tools) }
    return last.prepared
  }
  return {
    prepare: (input) => queue(() => prepare(input)),
    check: (input) => queue(async () => checkPrepared(await prepare(input), input, tools)),
  }
}

function createTools(): CheckTools {
  const story = createHeldStory()
  const run = createHeldRun()
  return {
    read: story.read,
    isTaggerNeeded(plain, phonics, input) {
      run.open(plain.story, homesOf, [phonics, ...toSettled(plain, input)])
      return run.isTaggerNeeded(plain.context, phonics.heteronyms)
    },
    async run(prepared, input) {
      const { context, settings, hasTagger } = prepared
      const finish = await findFinish(prepared, input)
      return run.run(context, input.rules, toRuleSettings(settings), { hasTagger, finish })
    },
  }
}

/** All that is the same for as long as what was said of a block holds; lists of the front matter are the story's alone. */
const toSettled = (
  { sequence, step, reader, settings, context }: PreparedStory,
  { resources, rules, suggest }: CheckInput,
): readonly unknown[] => [
  resources,
  rules,
  suggest,
  sequence,
  step,
  JSON.stringify([reader, context.names, toRuleSettings(settings), toFitness(settings)]),
]

const AS_IS: Finish = { block: (messages) => messages, loose: (messages) => messages }

async function findFinish(prepared: PreparedStory, input: CheckInput): Promise<Finish> {
  const suggester = await findSuggester(prepared, input)
  if (suggester === undefined) return AS_IS
  const { createFinish } = await import('./suggest.ts')
  return createFinish(prepared.context, { suggester })
}

const isSameInput = (one: CheckInput, other: CheckInput): boolean => {
  const names = new Set([...Object.keys(one), ...Object.keys(other)] as (keyof CheckInput)[])
  return [...names].every((name) => one[name] === other[name])
}

/** Work that is done piece by piece, each after the one before, whether that went well or not. */
function createQueue() {
  let last: Promise<unknown> = Promise.resolve()
  return <Result>(work: () => Promise<Result>): Promise<Result> => {
    const next = last.then(work, work)
    last = next
    return next
  }
}
