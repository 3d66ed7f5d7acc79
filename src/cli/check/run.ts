// One run of `check`: find the stories, check each, report, and say by the exit code what was found.

import { type CheckedStory, isChecked } from '../../check/result.ts'
import type { Result } from '../../report/reporter.ts'
import { toCount } from '../../report/text.ts'
import { complain, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { createProgress } from '../progress.ts'
import type { Baseline } from './baseline.ts'
import type { ResultCache } from './cache.ts'
import { chooseJudge } from './choose-judge.ts'
import { toExitCode } from './exit-code.ts'
import { inOrder } from './in-order.ts'
import { findInputs, keepChanged } from './inputs.ts'
import type { Circumstances, Judge } from './judge.ts'
import { type CheckOptions, type CheckSettings, toBaselineFile, WITH_SUGGESTIONS } from './options.ts'
import { createPrinter, type Printer } from './reporters.ts'
import { createTaskMaker, type StoryInput, type TaskMaker, toStoryPath } from './task.ts'

export async function runCheck(
  given: readonly string[],
  settings: CheckSettings,
  options: CheckOptions,
  io: Io,
): Promise<ExitCode> {
  const inputs = await findInputs(given, options, io)
  for (const problem of inputs.problems) complain(io, problem)
  for (const notice of inputs.notices) io.stderr.write(`${notice}\n`)
  const baseline = await openWantedBaseline(options, io)
  if (baseline && 'message' in baseline) {
    complain(io, baseline.message)
    return 2
  }
  const wanted = options.writeBaseline ? [] : settings.wanted
  const printers = await Promise.all(wanted.map((one) => createPrinter(one, options.quiet === true, io)))
  const circumstances = toCircumstances(settings, options)
  const cache =
    options.cache || options.cacheFile ? await openWantedCache(options.cacheFile, circumstances, io) : undefined
  const judge = chooseJudge(
    { stories: inputs.files.length, hasCache: cache !== undefined, workers: settings.workers },
    circumstances,
    io,
  )
  const tasks = createTaskMaker(io, circumstances)
  const progress = createProgress(io, inputs.files.length)
  const found: Found[] = []
  const shown: Result[] = []
  for await (const one of inOrder(inputs.files, (input) => check(input, { tasks, judge, cache, io }), judge.ahead)) {
    progress.step(found.length, one?.result.path ?? '')
    if (one === undefined) continue
    const kept = isChecked(one.result) ? keep(one.result, one.storyPath, { inputs, baseline, io }) : one.result
    found.push({ ...one, result: kept })
    const toShow = options.quiet && isChecked(kept) ? withErrorsOnly(kept) : kept
    shown.push(toShow)
    print(toShow, printers, progress.hide, io)
  }
  progress.end()
  await judge.end()
  const saved = cache?.save()
  if (saved !== undefined) complain(io, `the cache could not be kept: ${saved}`)
  const isBroken =
    inputs.problems.length > 0 || tasks.hasConfigErrors() || found.some(({ result }) => !isChecked(result))
  if (options.writeBaseline) return writeWantedBaseline(found, isBroken, options, io)
  const isWritten = printers.map((printer) => printer.end(shown)).every(Boolean)
  const hasGrown = tellBaseline(baseline, toBaselineFile(options), io)
  if (isBroken || !isWritten) return 2
  return hasGrown && settings.failOn !== 'never'
    ? 1
    : toExitCode(
        found.flatMap(({ result }) => (isChecked(result) ? [result] : [])),
        settings,
      )
}

interface Found {
  readonly storyPath: string
  readonly result: Result
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
  if ('failures' in task) return { storyPath: toStoryPath(input.file, io), result: task }
  const known = cache?.find(task)
  const result = known ?? (await judge.judge(task))
  if (!known && isChecked(result)) cache?.keep(task, result)
  return { storyPath: task.storyPath, result }
}

interface Sieves {
  readonly inputs: Awaited<ReturnType<typeof findInputs>>
  readonly baseline: Baseline | undefined
  readonly io: Io
}

function keep(story: CheckedStory, storyPath: string, { inputs, baseline, io }: Sieves): CheckedStory {
  const allowed = baseline ? baseline.filter(storyPath, story) : story
  return inputs.changed ? keepChanged(allowed, storyPath, inputs.changed, io) : allowed
}

const withErrorsOnly = (story: CheckedStory): CheckedStory => ({
  ...story,
  messages: story.messages.filter(({ severity }) => severity === 'error'),
})

function print(result: Result, printers: readonly Printer[], hide: () => void, io: Io): void {
  if (!isChecked(result) || printers.some(({ isLive }) => isLive)) hide()
  if (!isChecked(result)) for (const failure of result.failures) complain(io, failure)
  for (const printer of printers) printer.story(result)
}

/** Plain values only: they are compared in the cache and sent to workers. */
const toCircumstances = (
  { flags, reader, findEarlierWords, wanted }: CheckSettings,
  { config, stdinFilename, suggest }: CheckOptions,
): Circumstances => ({
  flags,
  suggest: suggest !== false && wanted.some(({ format }) => WITH_SUGGESTIONS.has(format)),
  ...(reader && { reader }),
  ...(findEarlierWords && { findEarlierWords }),
  ...(config === undefined ? {} : { config }),
  ...(stdinFilename === undefined ? {} : { stdinFilename }),
})

async function openWantedCache(file: string | undefined, circumstances: Circumstances, io: Io): Promise<ResultCache> {
  const { openCache, toCacheFile, toFingerprint } = await import('./cache.ts')
  return openCache(file ?? toCacheFile(io), toFingerprint(io), circumstances, io)
}

async function openWantedBaseline(
  options: CheckOptions,
  io: Io,
): Promise<Baseline | { readonly message: string } | undefined> {
  if (options.baseline === undefined || options.writeBaseline) return undefined
  const { openBaseline } = await import('./baseline.ts')
  return openBaseline(options.baseline, io)
}

async function writeWantedBaseline(
  found: readonly Found[],
  isBroken: boolean,
  options: CheckOptions,
  io: Io,
): Promise<ExitCode> {
  const { writeBaseline } = await import('./baseline.ts')
  const stories = found.flatMap(({ storyPath, result }) => (isChecked(result) ? [[storyPath, result] as const] : []))
  const message = writeBaseline(toBaselineFile(options), stories, io)
  if (message !== undefined) {
    complain(io, message)
    return 2
  }
  const messages = stories.reduce((sum, [, story]) => sum + story.messages.length, 0)
  io.stderr.write(
    `${toBaselineFile(options)} now allows ${toCount(messages, 'message')} of ${toCount(stories.length, 'story', 'stories')}.\n`,
  )
  return isBroken ? 2 : 0
}

/** Whether there is more than the baseline allows. */
function tellBaseline(baseline: Baseline | undefined, file: string, io: Io): boolean {
  if (!baseline) return false
  const { fewer, more } = baseline.change()
  if (more > 0) io.stderr.write(`${toCount(more, 'message')} more than ${file} allows.\n`)
  if (fewer > 0)
    io.stderr.write(`${toCount(fewer, 'message')} fewer than ${file} allows: --write-baseline makes it smaller.\n`)
  return more > 0
}
