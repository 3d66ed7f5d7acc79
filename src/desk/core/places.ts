// A place of a checked story by its number: its message, and the word that stands there.

import { toStraight } from '../../apostrophe.ts'
import type { PreparedStory } from '../../check/check-story.ts'
import type { FreshStory } from '../../check/result.ts'
import { isChecked } from '../../check/result.ts'
import type { Message } from '../../lint/types.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Sentence, Word } from '../../story/types.ts'
import type { OpenStory } from './open-story.ts'
import type { StoryText } from './questions/shared.ts'
import type { DeskState } from './state.ts'
import { checkOpen, isPrepared, openStory } from './stories.ts'

export interface FoundPlace {
  readonly open: OpenStory
  readonly prepared: PreparedStory
  readonly result: FreshStory
  readonly message: Message
  readonly found: { readonly word: Word; readonly sentence: Sentence } | undefined
}

export async function findPlace(story: StoryText, place: number, state: DeskState): Promise<Result<FoundPlace>> {
  const open = await openStory(story, state)
  const { prepared } = open
  const result = await checkOpen(open)
  if (!isChecked(result) || !isPrepared(prepared))
    return { ok: false, problems: 'problems' in result ? result.problems : [] }
  const message = result.messages[place]
  if (message === undefined)
    return fail({ code: 'bad-value', message: 'There is no such place in this story any more' })
  const found = message.word === undefined ? undefined : findWordAt(prepared, message.start)
  return succeed({ open, prepared, result, message, found })
}

function findWordAt({ story }: PreparedStory, start: number): FoundPlace['found'] {
  for (const { blocks } of story.pages)
    for (const { sentences } of blocks)
      for (const sentence of sentences) {
        const word = sentence.words.find((one) => one.start === start)
        if (word) return { word, sentence }
      }
  return undefined
}

/** The places at which the same word has the same fault, in order. */
export function findSame({ result, message }: FoundPlace): readonly Message[] {
  const key = toKey(message.word)
  return result.messages.filter(
    (one) =>
      one.word !== undefined && toKey(one.word) === key && one.reason === message.reason && one.rule === message.rule,
  )
}

const toKey = (word: string | undefined): string | undefined => word && toStraight(word.toLowerCase())
