// A check of the story on the page: pages, places and marks.

import type { FreshStory } from '../../check/result.ts'
import { isChecked } from '../../check/result.ts'
import type { Message } from '../../lint/types.ts'
import type { OpenStory } from './open-story.ts'
import type { StoryText } from './questions/shared.ts'
import type { CheckAnswer, CheckedText, Mark, PageCount, Place } from './questions/story.ts'
import type { DeskState } from './state.ts'
import { checkOpen, openStory } from './stories.ts'

export async function check(story: StoryText, state: DeskState): Promise<CheckAnswer> {
  const { path, version } = story
  const open = await openStory(story, state)
  const result = await checkOpen(open)
  if (!isChecked(result)) return { path, version, checked: false, problems: [...open.told, ...result.problems] }
  return { path, version, ...toChecked(result, open) }
}

function toChecked(result: FreshStory, { reader, told }: OpenStory): Omit<CheckedText, 'path' | 'version'> {
  const { sequence, step, accent, figures, messages } = result
  const { words, unreadable, readableShare } = figures.total
  return {
    checked: true,
    sequence: { name: sequence.name, title: sequence.title },
    step,
    accent,
    reader: reader ? { name: reader.name, notice: reader.notice } : null,
    pages: toPages(result),
    total: { words, notYet: unreadable, readableShare },
    told,
    places: messages.map((message) => toPlace(message, result)),
    marks: messages.flatMap(toMarks),
  }
}

const toPages = ({ story, figures }: FreshStory): readonly PageCount[] =>
  story.pages.map(({ number, start, end }, at) => ({
    ...{ number, start, end },
    words: figures.pages[at]?.words ?? 0,
    notYet: figures.pages[at]?.unreadable ?? 0,
  }))

function toPlace(message: Message, { lines }: FreshStory): Place {
  const { start, end, page, severity, word, rule, reason, letters, readableAt, note } = message
  return {
    ...{ start, end, page, severity, rule, letters, readableAt },
    word: word ?? null,
    message: message.message,
    note: note ?? null,
    reason: reason ?? null,
    line: lines.toPoint(start).line,
  }
}

/** The letters to blame, and the whole word; what is no word is one stretch. What stands nowhere has no mark. */
function toMarks({ start, end, word, letterRanges }: Message, place: number): readonly Mark[] {
  if (start === end) return []
  if (word === undefined) return [{ kind: 'stretch', start, end, place }]
  const letters = letterRanges.map((range): Mark => ({ kind: 'letters', ...range, place }))
  return [{ kind: 'word', start, end, place }, ...letters]
}
