// Whether a word that somebody types can be read, and why not.

import { succeed } from '../../problem/index.ts'
import { toReasonTexts } from '../../report/explain.ts'
import { findReadableAt, judgeInSequence } from '../../verdict/index.ts'
import type { Verdict } from '../../verdict/types.ts'
import { toLetters } from './letters.ts'
import type { StoryText, Tried } from './questions/shared.ts'
import type { TypedWord } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

export async function judgeTyped(story: StoryText, typed: string, state: DeskState): Promise<Tried<TypedWord>> {
  const prepared = toPrepared(await openStory(story, state))
  if (!prepared.ok) return prepared
  const { sequence, step, reader, settings } = prepared.value
  const word = typed.trim()
  const pronunciations = toolsOf(state).phonicsFor(sequence.accent).read(word)
  const names = settings.names.map(({ value }) => value)
  const options = { names, ...(reader && { reader }) }
  const verdict = judgeInSequence(pronunciations, sequence, step, options)
  const blamed = verdict.reasons[0]?.letters ?? []
  return succeed({
    word,
    readable: verdict.readable,
    message: verdict.readable ? READABLE[verdict.kind] : toWhyNot(word, verdict),
    readableAt: findReadableAt(pronunciations, sequence, options) ?? null,
    letters: toLetters(word, verdict.pronunciation, blamed, sequence),
  })
}

const READABLE: Readonly<Record<Verdict['kind'], string>> = {
  decodable: 'It can be sounded out.',
  sight: 'It is known by heart.',
  name: 'It is a name of this story.',
  unreadable: '',
}

function toWhyNot(word: string, { reasons }: Verdict): string {
  const text = toReasonTexts(reasons, word).join('; ')
  return text === '' ? 'It has no letters that can be sounded out.' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
}
