// What can be done at a place, each as the change that it makes.

import { findCures } from '../../fix/cures.ts'
import { addToList } from '../../fix/head-list.ts'
import { createSlots, type FindSlot, putIn, takeOut } from '../../fix/put-in.ts'
import { toCaseOf } from '../../words/index.ts'
import { toChanged } from './changes.ts'
import { type FoundPlace, findSame } from './places.ts'
import type { Fix } from './questions/cards.ts'
import type { Changed } from './questions/shared.ts'
import { type DeskState, toolsOf } from './state.ts'
import { findTeaching } from './teach.ts'

export async function toFixes(place: FoundPlace, path: string, state: DeskState): Promise<readonly Fix[]> {
  const { message, prepared } = place
  const { story, context } = prepared
  const slots = createSlots(story)
  const { name, heart, canBeKept } = findCures(message, context.names)
  const list = async (key: 'names' | 'sight words', word: string | undefined): Promise<Changed | undefined> => {
    const edit = word === undefined ? undefined : await addToList(story, key, word)
    return edit && toChanged(path, story.source, [edit])
  }
  const named = await list('names', name !== undefined && (await isLikelyName(place, name, state)) ? name : undefined)
  const known = await list('sight words', heart)
  return [
    ...toReplacements(place, path, slots),
    ...toLeftOut(place, path, slots),
    ...(message.word !== undefined && message.reason !== undefined && slots(message.start)
      ? [{ kind: 'own' as const }]
      : []),
    ...(named && name !== undefined ? [{ kind: 'name' as const, name, change: named }] : []),
    ...(known && heart !== undefined ? [{ kind: 'heart' as const, word: heart, change: known }] : []),
    ...(canBeKept ? [{ kind: 'keep' as const }] : []),
    ...(await findTeaching(place, state)),
  ]
}

/** Faults of words that are likely to be names. */
const NAME_REASONS: ReadonlySet<string> = new Set(['unlisted-name', 'unknown-word', 'unsure', 'guessed'])

/** At the start of a sentence any word has a capital: one that the dictionary has as more than a name is none. */
async function isLikelyName({ message }: FoundPlace, name: string, state: DeskState): Promise<boolean> {
  if (NAME_REASONS.has(message.reason ?? '')) return true
  const help = await toolsOf(state).words()
  return help.factsOf(name.toLowerCase())?.main === undefined
}

/** None for a word whose emphasis reaches beyond it: without its marks, the rest would read otherwise. */
function toReplacements(place: FoundPlace, path: string, slots: FindSlot): readonly Fix[] {
  const { message, prepared } = place
  const { start, end, word, suggestions } = message
  const { source } = prepared.story
  return suggestions.flatMap((text): readonly Fix[] => {
    const slot = word === undefined ? undefined : slots(start)
    const edit = word === undefined ? { start, end, text } : slot && putIn(slot, source, text)
    const change = edit && toChanged(path, source, [edit])
    return change
      ? [{ kind: 'replace', word: text, change, everywhere: toEverywhere(place, path, text, slots) ?? null }]
      : []
  })
}

/** The sentence without the word, where it does without it. */
function toLeftOut({ message, prepared }: FoundPlace, path: string, slots: FindSlot): readonly Fix[] {
  const slot = message.canGo ? slots(message.start) : undefined
  const edit = slot && takeOut(slot, prepared.story.source)
  const change = edit && toChanged(path, prepared.story.source, [edit])
  return slot && change ? [{ kind: 'out', word: slot.word, change }] : []
}

/** Undefined where it stands once, or where one of its places cannot be changed. */
export function toEverywhere(place: FoundPlace, path: string, text: string, slots: FindSlot): Changed | undefined {
  const same = findSame(place)
  if (same.length < 2) return undefined
  const { source } = place.prepared.story
  const lower = text === toCaseOf(place.message.word ?? '', text.toLowerCase()) ? text.toLowerCase() : text
  const edits = same.flatMap(({ start }) => {
    const slot = slots(start)
    return slot ? [putIn(slot, source, toCaseOf(slot.word, lower))] : []
  })
  return edits.length === same.length ? toChanged(path, source, edits) : undefined
}
