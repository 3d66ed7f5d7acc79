// The one walk over a story: every rule is handed what it listens for, and a word's faults go to the rules that claim them.

import type { Story } from '../story/types.ts'
import { type MadeRules, makeRules } from './made-rules.ts'
import { toOrdered } from './message.ts'
import { readSwitches } from './switches/directives.ts'
import type { Message, Rule, RuleSettings, StoryContext } from './types.ts'
import { createFirstTest } from './word-faults.ts'

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
  const made = makeRules(context, rules, settings, createFirstTest())
  walk(context.story, made)
  return toOrdered(applySwitches(context, rules, made, made.take()))
}

function walk(story: Story, made: MadeRules): void {
  for (const page of story.pages) {
    made.page(page)
    for (const block of page.blocks) {
      made.block(block, page)
      for (const sentence of block.sentences) {
        made.sentence(sentence, page)
        for (const word of sentence.words) for (const ask of made.wordSteps) ask(word, sentence)
        made.marks(sentence)
      }
    }
  }
  made.story(story)
}

/** The same list where there are no switches. Leaves out what they silence, and lets the rules on switches speak. They come last and cannot be silenced themselves. */
export function applySwitches(
  { story }: Pick<StoryContext, 'story'>,
  rules: readonly Rule[],
  { all, take }: Pick<MadeRules, 'all' | 'take'>,
  messages: Message[],
): Message[] {
  if (story.comments.length === 0) return messages
  const ids = rules.map(({ id }) => id)
  const ran = all.map(({ rule }) => rule.id)
  const { kept, unused, problems } = readSwitches(story, ids).filter(messages, ran)
  for (const problem of [...problems, ...unused])
    all.find(({ rule }) => rule.id === problem.rule)?.listener.switchProblem?.(problem)
  return [...kept, ...take()]
}
