// One run of `check`: find the stories, check each, report, and say by the exit code what was found.

import { rules } from '../../../rules/index.ts'
import { checkStory } from '../../check/check-story.ts'
import { type CheckedStory, isChecked } from '../../check/result.ts'
import type { Result } from '../../report/reporter.ts'
import { complain, type ExitCode } from '../command.ts'
import { findStories } from '../files.ts'
import type { Io } from '../io.ts'
import { createProgress } from '../progress.ts'
import { createResources } from '../resources.ts'
import type { CheckOptions, CheckSettings } from './options.ts'
import { createPrinter } from './reporters.ts'
import { createTaskMaker, type StoryInput } from './task.ts'

export async function runCheck(given: readonly string[], settings: CheckSettings, options: CheckOptions, io: Io): Promise<ExitCode> {
  const found = await findInputs(given, options, io)
  for (const problem of found.problems) complain(io, problem)
  for (const notice of found.notices) io.stderr.write(`${notice}\n`)
  const isQuiet = options.quiet === true
  const printers = await Promise.all(settings.wanted.map((wanted) => createPrinter(wanted, isQuiet, io)))
  const tasks = createTaskMaker(io, options)
  const resources = createResources(io)
  const progress = createProgress(io, found.files.length)
  const results: Result[] = []
  const shown: Result[] = []
  for (const [at, file] of found.files.entries()) {
    progress.step(at, file.path)
    const task = await tasks.make(file)
    if (task === undefined) continue
    const result = 'failures' in task ? task : await checkStory({ ...task, flags: settings.flags, rules, resources })
    results.push(result)
    const toShow = isQuiet && isChecked(result) ? withErrorsOnly(result) : result
    shown.push(toShow)
    if (!isChecked(result) || printers.some(({ isLive }) => isLive)) progress.hide()
    if (!isChecked(result)) for (const failure of result.failures) complain(io, failure)
    for (const printer of printers) printer.story(toShow)
  }
  progress.end()
  const isWritten = printers.map((printer) => printer.end(shown)).every(Boolean)
  const isBroken = found.problems.length > 0 || !isWritten || tasks.hasConfigErrors() || results.some((result) => !isChecked(result))
  return isBroken ? 2 : toExitCode(results.filter(isChecked), settings)
}

interface Inputs {
  readonly files: readonly StoryInput[]
  readonly notices: readonly string[]
  readonly problems: readonly string[]
}

async function findInputs(given: readonly string[], { staged }: CheckOptions, io: Io): Promise<Inputs> {
  if (!staged) return findStories(given, io)
  const { findStaged } = await import('./staged.ts')
  const found = await findStaged(given, io)
  return 'message' in found ? { files: [], notices: [], problems: [found.message] } : { ...found, notices: [], problems: [] }
}

const withErrorsOnly = (story: CheckedStory): CheckedStory =>
  ({ ...story, messages: story.messages.filter(({ severity }) => severity === 'error') })

export function toExitCode(stories: readonly CheckedStory[], { failOn, maxWarnings }: Pick<CheckSettings, 'failOn' | 'maxWarnings'>): ExitCode {
  const count = (severity: string): number =>
    stories.reduce((sum, { messages }) => sum + messages.filter((one) => one.severity === severity).length, 0)
  if (maxWarnings !== undefined && count('warning') > maxWarnings) return 1
  if (failOn === 'never') return 0
  return count('error') > 0 || (failOn === 'warning' && count('warning') > 0) ? 1 : 0
}
