// Completion: words that the child can read, for the letters before the cursor.

import { toFitness } from '../../check/who-reads.ts'
import { findCompleter } from '../../finder/readable-words.ts'
import { toCaseOf } from '../../words/index.ts'
import type { StoryText } from './questions/shared.ts'
import type { Completions } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

/** More than this no word has. */
const LONGEST = 60

export async function complete(story: StoryText, at: number, state: DeskState): Promise<Completions> {
  const prefix = /\p{L}[\p{L}’']*$/u.exec(story.text.slice(Math.max(0, at - LONGEST), at))?.[0] ?? ''
  const nothing = { version: story.version, from: at - prefix.length, words: [] }
  if (prefix === '') return nothing
  const prepared = toPrepared(await openStory(story, state))
  if (!prepared.ok) return nothing
  const tools = toolsOf(state)
  const { data } = await tools.words()
  const { sequence, step, reader, settings } = prepared.value
  const completer = findCompleter({
    ...{ data, lexicon: tools.lexicon, phonics: tools.phonicsFor(sequence.accent), sequence, step, reader },
    names: settings.names.map(({ value }) => value),
    ...toFitness(settings),
  })
  const words = completer(prefix).flatMap(({ word, kind }) =>
    kind === 'unreadable' ? [] : [{ word: kind === 'name' ? word : toCaseOf(prefix, word), kind }],
  )
  return { ...nothing, words }
}
