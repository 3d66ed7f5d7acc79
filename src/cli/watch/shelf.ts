// The stories that a watcher has checked: which of them a change touches, and what is said of them.

import { type CheckedStory, type UncheckedStory, withErrorsOnly } from '../../check/result.ts'
import { STORY_NAME } from '../../files/index.ts'
import { type Checker, toStamp } from '../checker.ts'
import { toCrash } from '../files/file-problem.ts'
import { findStories, type StoryFile } from '../files/find.ts'
import { readTextFile } from '../files/read.ts'
import { toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'
import type { WatchReport } from './report.ts'

/** The stories that are watched, and what was last read of each. */
export interface Shelf {
  /** Checks what these changes touch, all stories where they are settings. Gives the paths of the stories checked. */
  update(changed: readonly string[]): Promise<readonly string[]>
  /** Those of the stories, and all settings, that have changed since they were read. */
  findChanged(paths: readonly string[]): readonly string[]
  /** Settings that may lie outside the watched folders. */
  sources(): readonly string[]
}

export function createShelf(
  given: readonly string[],
  checker: Checker,
  report: WatchReport,
  isQuiet: boolean,
  io: Io,
): Shelf {
  let stories = new Map<string, StoryFile>()
  const read = new Map<string, string>()

  async function list(): Promise<void> {
    const before = stories
    stories = new Map((await findStories(given, io)).files.map((file) => [toSlashes(file.file), file]))
    for (const [path, { path: shown }] of before) if (!stories.has(path) && read.delete(path)) report.clear(shown)
  }

  async function checkOne(path: string, story: StoryFile): Promise<void> {
    const wasRead = read.has(path)
    read.set(path, toStamp(path, io))
    const result = await toResult(path, story, checker, report, io)
    if (result) report.story(isQuiet ? withErrorsOnly(result) : result)
    else if (read.delete(path) && wasRead) report.clear(story.path)
  }

  return {
    async update(changed) {
      const isWhole = checker.refresh() || stories.size === 0 || changed.some((path) => !STORY_NAME.test(path))
      if (isWhole || changed.some((path) => !stories.has(path) || !io.fs.existsSync(path))) await list()
      const due = isWhole ? [...stories.keys()] : changed
      for (const path of due) {
        const story = stories.get(path)
        if (story) await checkOne(path, story)
      }
      return due
    },
    findChanged: (paths) => [
      ...paths.filter((path) => read.has(path) && toStamp(path, io) !== read.get(path)),
      ...checker.changedSources(),
    ],
    sources: () => checker.sources().filter((path) => io.fs.existsSync(path)),
  }
}

async function toResult(
  storyPath: string,
  { file, path }: StoryFile,
  checker: Checker,
  report: WatchReport,
  io: Io,
): Promise<CheckedStory | UncheckedStory | undefined> {
  try {
    report.configs(await checker.findChain(storyPath))
    const text = readTextFile(file, io, path)
    if (!text.ok) return { path, problems: text.problems }
    return await checker.check({ path, storyPath, source: text.value })
  } catch (error) {
    return { path, problems: [toCrash(error)] }
  }
}
