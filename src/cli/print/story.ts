// Reads the story that is printed: its text, its pictures, what is marked, and what the grown-up must know.

import { basename } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { prepareStory } from '../../check/check-story.ts'
import { readFlags } from '../../config/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { StoryToPrint } from '../../sheets/index.ts'
import { createLines } from '../../story/index.ts'
import { createTaskMaker } from '../check/task.ts'
import { findStories } from '../files/find.ts'
import type { Io } from '../io.ts'
import type { ReaderSettings } from '../reader.ts'
import { createResources } from '../resources.ts'
import type { PrintOptions } from './options.ts'

export interface FileStory extends StoryToPrint {
  /** Where it lies; undefined where it came in by a pipe. */
  readonly file: string | undefined
}

export async function readStoryToPrint(
  path: string | undefined,
  options: PrintOptions,
  io: Io,
): Promise<Result<FileStory>> {
  if (path === undefined)
    return fail({ code: 'no-words', message: 'Say which story', note: 'For example: battledore print book tam.md' })
  const found = await findStories([path], io)
  const [file, ...more] = found.files
  if (found.problems.length > 0) return fail(...found.problems)
  if (!file || more.length > 0)
    return fail({
      code: 'bad-value',
      message: `One story is printed at a time; \`${path}\` names ${found.files.length}`,
    })
  const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
  if (flags.problems.length > 0) return fail(...flags.problems)
  const reader = options.reader === undefined ? undefined : await findReader(options.reader, io)
  if (reader && !reader.ok) return reader
  const task = await createTaskMaker(io, {}).make(file)
  if (task === undefined)
    return fail({ code: 'unused-file', message: `\`${file.path}\` is left out by the settings of its folder` })
  if ('problems' in task) return fail(...task.problems)
  const resources = createResources(io)
  const layer = { ...reader?.value.layer, ...flags.layer }
  const extra = reader && { reader: reader.value.extra }
  const prepared = await prepareStory({ ...task, flags: layer, rules, resources, ...extra })
  if ('problems' in prepared) return fail(...prepared.problems)
  return succeed({
    ...prepared,
    notice: reader?.value.notice,
    readerPath: options.reader,
    path: task.path,
    file: file.file === '-' ? undefined : file.file,
    name: file.file === '-' ? 'story' : basename(task.path).replace(/\.[^.]*$/, ''),
    lines: createLines(prepared.story.source),
    phonics: resources.phonicsFor(prepared.sequence.accent),
  })
}

/** What one reader knows is read only where it is asked for. */
async function findReader(path: string, io: Io): Promise<Result<ReaderSettings>> {
  const { readReader } = await import('../reader.ts')
  return readReader(path, io)
}
