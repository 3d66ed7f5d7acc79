// Which stories a check is for: those that are named, those that are staged, those that have changed.

import { resolve } from 'node:path'
import type { CheckedStory } from '../../check/result.ts'
import type { Problem } from '../../problem/index.ts'
import { findStories } from '../files/find.ts'
import type { Io } from '../io.ts'
import type { ChangedLines, LineRange } from './changed.ts'
import type { CheckOptions } from './options.ts'
import type { StoryInput } from './task.ts'

export interface Inputs {
  readonly files: readonly StoryInput[]
  readonly notices: readonly string[]
  readonly problems: readonly Problem[]
  readonly changed?: ChangedLines
}

export async function findInputs(given: readonly string[], options: CheckOptions, io: Io): Promise<Inputs> {
  const inputs = options.staged ? await findStagedInputs(given, io) : await findStories(given, io)
  if (options.changedSince === undefined) return inputs
  const { findChanged } = await import('./changed.ts')
  const changed = findChanged(options.changedSince, options.staged === true, io)
  if (!changed.ok) return toFailed(changed.problems)
  const isTouched = ({ file }: StoryInput): boolean => {
    const ranges = changed.value.get(file)
    return file === '-' || ranges === 'all' || (ranges !== undefined && ranges.length > 0)
  }
  return { ...inputs, files: inputs.files.filter(isTouched), changed: changed.value }
}

async function findStagedInputs(given: readonly string[], io: Io): Promise<Inputs> {
  const { findStaged } = await import('./staged.ts')
  const found = await findStaged(given, io)
  return found.ok ? { files: found.value, notices: [], problems: [] } : toFailed(found.problems)
}

const toFailed = (problems: readonly Problem[]): Inputs => ({ files: [], notices: [], problems })

/** The story with the messages that touch a changed line. */
export function keepChanged(story: CheckedStory, storyPath: string, changed: ChangedLines, { cwd }: Io): CheckedStory {
  const ranges = changed.get(resolve(cwd, storyPath))
  if (ranges === undefined || ranges === 'all') return story
  const isChanged = ({ start, end }: CheckedStory['messages'][number]): boolean => {
    const [first, last] = [story.lines.toPoint(start).line, story.lines.toPoint(Math.max(start, end - 1)).line]
    return ranges.some(([from, to]: LineRange) => first <= to && last >= from)
  }
  return { ...story, messages: story.messages.filter(isChanged) }
}
