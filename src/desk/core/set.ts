// Changes a setting of the story, by one small edit where it stands.

import { readText } from '../../check/read-text.ts'
import { isSequencePath } from '../../files/index.ts'
import type { Edit } from '../../fix/edit.ts'
import { addToList, removeFromList } from '../../fix/head-list.ts'
import { removeKey, setValue } from '../../fix/head-value.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { readStory, type Story } from '../../story/index.ts'
import { toChanged } from './changes.ts'
import type { AboutEdit } from './questions/about.ts'
import type { Changed, StoryText, Tried } from './questions/shared.ts'
import type { DeskState } from './state.ts'
import { openStory } from './stories.ts'

export async function set(story: StoryText, edit: AboutEdit, state: DeskState): Promise<Tried<Changed>> {
  const { input } = await openStory(story, state)
  const read = input && (await readText(input))
  // A story that cannot be checked can have its settings changed all the same: they may be what is wrong.
  const source = read && !('problems' in read) ? read.story : readStory(story.text)
  const edits = await toEdits(edit, source, story.path)
  if (!edits.ok) return edits
  const change = toChanged(story.path, story.text, edits.value)
  return change ? succeed(change) : fail(BY_HAND)
}

const BY_HAND = {
  code: 'bad-value',
  message: 'The lines at the top of this story are not built so that they can be changed from here',
  note: 'Look at the file as it is, and change them there.',
} as const

async function toEdits(edit: AboutEdit, story: Story, path: string): Promise<Result<readonly Edit[]>> {
  if ('add' in edit) return add(edit.key, edit.add.trim(), story)
  if ('remove' in edit) return toResult(await removeFromList(story, edit.key, edit.remove))
  const { key } = edit
  const value = edit.value?.trim() || null
  if (key === 'title') return setTitle(story, value)
  if (key === 'order' && value !== null && !/^-?\d+(?:\.\d+)?$/.test(value))
    return fail({ code: 'bad-value', message: `The place on the shelf is a number; this is \`${value}\`` })
  if (value === null) return toResult(await removeKey(story, key))
  const isPath = key === 'sequence' && isSequencePath(value)
  return toResult(await setValue(story, key, isPath ? toSeenFrom(path, value) : value))
}

const toResult = (edit: Edit | null | undefined): Result<readonly Edit[]> =>
  edit === undefined ? fail(BY_HAND) : succeed(edit === null ? [] : [edit])

async function add(key: string, word: string, story: Story): Promise<Result<readonly Edit[]>> {
  if (word === '') return succeed([])
  if (/[,\n[\]{}]/.test(word))
    return fail({ code: 'bad-value', message: `\`${word}\` cannot be listed: give one word or name, without commas` })
  return toResult(await addToList(story, key, word))
}

/** The heading where there is one, else the setting; both where there are both. */
async function setTitle(story: Story, value: string | null): Promise<Result<readonly Edit[]>> {
  const { title, source } = story
  const isSet = /^\s*title\s*:/im.test(story.frontMatter?.value ?? '')
  const edits: Edit[] = []
  if (title) {
    if (value === null)
      return fail({
        code: 'bad-value',
        message: 'The title is a heading of the story: take it out of the text instead',
      })
    const edit = { start: title.toSource(0), end: title.toSource(title.text.length), text: toMarkdown(value) }
    const after = readStory(source.slice(0, edit.start) + edit.text + source.slice(edit.end))
    // Marks of emphasis around the old title would stay, and mean something else.
    if (after.title?.text !== value) return fail(BY_HAND)
    edits.push(edit)
  }
  if (!title || isSet) {
    const edit = value === null ? await removeKey(story, 'title') : await setValue(story, 'title', value)
    if (edit === undefined) return fail(BY_HAND)
    if (edit) edits.push(edit)
  }
  return succeed(edits)
}

/** What Markdown would read as a mark is meant as it stands. */
const toMarkdown = (text: string): string => text.replace(/[\\`*_[\]<>&~|]/g, '\\$&').replace(/#+$/, '\\$&')

/** A file of the folder, as its path is written in a story of the folder. */
function toSeenFrom(storyPath: string, path: string): string {
  const [from, to] = [storyPath.split('/').slice(0, -1), path.split('/')]
  let same = 0
  while (same < from.length && same < to.length - 1 && from[same] === to[same]) same++
  return [...from.slice(same).map(() => '..'), ...to.slice(same)].join('/')
}
