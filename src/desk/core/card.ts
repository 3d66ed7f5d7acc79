// The card of a place: letters over example words, why, and what can be done.

import { toFitness } from '../../check/who-reads.ts'
import type { Message } from '../../lint/types.ts'
import { succeed } from '../../problem/index.ts'
import { findStep } from '../../sequence/index.ts'
import { toFixes } from './fixes.ts'
import { toLetters } from './letters.ts'
import { type FoundPlace, findPlace, findSame } from './places.ts'
import type { Card, CardAnswer } from './questions/cards.ts'
import type { StoryText } from './questions/shared.ts'
import { type DeskState, toolsOf } from './state.ts'

export async function card(story: StoryText, place: number, state: DeskState): Promise<CardAnswer> {
  const found = await findPlace(story, place, state)
  if (!found.ok) return found
  const message = await withSuggestions(found.value, state)
  return succeed(await toCard({ ...found.value, message }, { path: story.path, version: story.version, place }, state))
}

/** The message with what could stand there, as `battledore check` tells it. */
async function withSuggestions({ prepared, message }: FoundPlace, state: DeskState): Promise<Message> {
  const { sequence, step, reader, settings, context } = prepared
  const { wantsWord, withSuggestions } = await import('../../check/suggest.ts')
  if (!wantsWord(message)) return message
  const help = await toolsOf(state).words()
  const suggester = help.suggesterFor({ sequence, step, reader, ...toFitness(settings) })
  return withSuggestions([message], context, { suggester })[0] ?? message
}

async function toCard(
  place: FoundPlace,
  about: Pick<Card, 'path' | 'version' | 'place'>,
  state: DeskState,
): Promise<Card> {
  const { prepared, message, found } = place
  const { context, sequence } = prepared
  const judged = found?.word.form === 'word' ? context.judge(found.word, found.sentence) : undefined
  const step = message.readableAt === null ? undefined : findStep(sequence, message.readableAt)
  return {
    ...about,
    page: message.page,
    word: message.word ?? null,
    message: message.message,
    note: message.note ?? null,
    readableAt: step ? { id: step.id, title: step.title } : null,
    letters: found && judged ? toLetters(found.word.text, judged.verdict.pronunciation, message.letters, sequence) : [],
    times: Math.max(1, findSame(place).length),
    fixes: await toFixes(place, about.path, state),
  }
}
