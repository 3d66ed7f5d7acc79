// Each story checked in turn: from the cache, here, or by workers; handed on in order.

import { isChecked } from '../../check/result.ts'
import { type Problem, succeed } from '../../problem/index.ts'
import type { Result } from '../../report/reporter.ts'
import { complainOf } from '../command.ts'
import type { Io } from '../io.ts'
import type { ResultCache } from './cache.ts'
import { chooseJudge } from './choose-judge.ts'
import { inOrder } from './in-order.ts'
import type { Judge, RunSettings } from './judge.ts'
import { type CheckOptions, type CheckSettings, WITH_SUGGESTIONS } from './options.ts'
import { type StoryInput, type TaskMaker, toStoryPath } from './task.ts'

export interface Found {
  readonly storyPath: string
  readonly result: Result
  /** What is wrong with the config files that hold for the story. */
  readonly configProblems: readonly Problem[]
}

interface Work {
  readonly files: readonly StoryInput[]
  readonly tasks: TaskMaker
  readonly settings: CheckSettings
  readonly options: CheckOptions
  readonly io: Io
}

/** Undefined for a story that is left out. */
export async function* checkAll({ files, tasks, settings, options, io }: Work): AsyncGenerator<Found | undefined> {
  const runSettings = toRunSettings(settings, options)
  const hasCache = options.cache === true || options.cacheFile !== undefined
  const cache = hasCache ? await openWantedCache(options.cacheFile, runSettings, io) : undefined
  const judge = chooseJudge({ stories: files.length, workers: settings.workers }, runSettings, io)
  try {
    yield* inOrder(files, (input) => check(input, { tasks, judge, cache, io }), judge.ahead)
  } finally {
    await judge.end()
  }
  const saved = cache?.save() ?? succeed(undefined)
  if (saved.ok) return
  complainOf(
    io,
    saved.problems.map((problem) => ({ ...problem, message: `the cache could not be kept: ${problem.message}` })),
  )
}

interface Tools {
  readonly tasks: TaskMaker
  readonly judge: Judge
  readonly cache: ResultCache | undefined
  readonly io: Io
}

async function check(input: StoryInput, { tasks, judge, cache, io }: Tools): Promise<Found | undefined> {
  const task = await tasks.make(input)
  if (task === undefined) return undefined
  if ('problems' in task) return { storyPath: toStoryPath(input.file, io), result: task, configProblems: [] }
  const known = cache?.find(task)
  const result = known ?? (await judge.judge(task))
  if (cache && !known && io.env['BATTLEDORE_DEBUG']) io.stderr.write(`${task.path} is not in the cache.\n`)
  if (!known && isChecked(result)) cache?.keep(task, result)
  return { storyPath: task.storyPath, result, configProblems: task.chain.problems }
}

/** Plain values where they can be: they are compared in the cache and sent to workers. */
const toRunSettings = (
  { flags, reader, findEarlierWords, wanted }: CheckSettings,
  { config, stdinFilename, suggest }: CheckOptions,
): RunSettings => ({
  flags,
  suggest: suggest !== false && wanted.some(({ format }) => WITH_SUGGESTIONS.has(format)),
  ...(reader && { reader }),
  ...(findEarlierWords && { findEarlierWords }),
  ...(config === undefined ? {} : { config }),
  ...(stdinFilename === undefined ? {} : { stdinFilename }),
})

async function openWantedCache(file: string | undefined, runSettings: RunSettings, io: Io): Promise<ResultCache> {
  const { openCache, toCacheFile, toFingerprint } = await import('./cache.ts')
  return openCache(file ?? toCacheFile(io), toFingerprint(io), runSettings, io)
}
