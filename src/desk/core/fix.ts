// Fixes for which the maker says something first: why a word is kept, or a word of her own.

import { rules } from '../../../rules/index.ts'
import { checkStory } from '../../check/check-story.ts'
import { isChecked } from '../../check/result.ts'
import { applyEdits, shapeTyped } from '../../fix/index.ts'
import { createSlots, putIn } from '../../fix/put-in.ts'
import { switchOff } from '../../fix/switch-off.ts'
import { isTypedWord } from '../../fix/typed.ts'
import { fail, type Result, succeed, toProblemText } from '../../problem/index.ts'
import { toChanged } from './changes.ts'
import { toEverywhere } from './fixes.ts'
import { type FoundPlace, findPlace } from './places.ts'
import type { FixAnswer, FixWish } from './questions/cards.ts'
import type { Changed, StoryText } from './questions/shared.ts'
import { type DeskState, folderOf, toolsOf } from './state.ts'

export async function fix(story: StoryText, place: number, wish: FixWish, state: DeskState): Promise<FixAnswer> {
  const found = await findPlace(story, place, state)
  if (!found.ok) return found
  if (wish.kind === 'keep') return keep(found.value, story.path, wish.reason)
  return putOwn(found.value, story.path, wish, state)
}

function keep({ prepared, message }: FoundPlace, path: string, reason: string): FixAnswer {
  if (reason.trim() === '')
    return fail({ code: 'bad-value', message: 'Say why it is kept, for whoever reads the story next' })
  const edit = switchOff(prepared.story, message.start, message.rule, message.word, reason)
  const change = edit && toChanged(path, prepared.story.source, [edit])
  return change
    ? succeed({ change, told: null })
    : fail({ code: 'bad-value', message: 'Nothing can be kept here: this is not in the text that the child reads' })
}

async function putOwn(
  place: FoundPlace,
  path: string,
  { word, everywhere }: FixWish & { readonly kind: 'own' },
  state: DeskState,
): Promise<FixAnswer> {
  const typed = word.trim().replace(/\s+/g, ' ')
  if (!isTypedWord(typed))
    return fail({
      code: 'bad-value',
      message: `\`${typed}\` is not a word: it may have letters, an apostrophe and a dash`,
    })
  const { message, prepared } = place
  const slots = createSlots(prepared.story)
  const slot = slots(message.start)
  if (slot === undefined)
    return fail({ code: 'bad-value', message: 'No word can be put in here: marks of emphasis reach beyond the word' })
  const help = await toolsOf(state).words()
  const shaped = shapeTyped(slot.word, typed, help.factsOf)
  const one = toChanged(path, prepared.story.source, [putIn(slot, prepared.story.source, shaped)])
  const change = (everywhere ? toEverywhere(place, path, shaped, slots) : undefined) ?? (one as Changed)
  return succeed({ change, told: (await findWhyNot(place, change, state)) ?? null })
}

/** Why the word could not be read there; undefined where it can be. */
async function findWhyNot(
  { open, prepared, message }: FoundPlace,
  change: Changed,
  state: DeskState,
): Promise<string | undefined> {
  if (open.input === undefined) return undefined
  const { resources } = folderOf(state)
  const source = applyEdits(prepared.story.source, change.edits)
  const tried: Result<unknown> | Awaited<ReturnType<typeof checkStory>> = await checkStory({
    ...open.input,
    source,
    rules,
    resources,
  })
  if (!isChecked(tried)) return tried.problems.map(toProblemText)[0]
  // Edits before the place move it.
  const moved = change.edits
    .filter(({ end }) => end <= message.start)
    .reduce((sum, { start, end, text }) => sum + text.length - (end - start), 0)
  const at = message.start + moved
  const own = change.edits.find(({ start, end }) => start <= message.start && end > message.start)
  const length = own ? own.text.length : 1
  return tried.messages.find(({ word, start, end }) => word !== undefined && start < at + length && end > at)?.message
}
