// One run of `check`: find the stories, check each, report, and say by the exit code what was found.

import { type CheckedStory, isChecked } from '../../check/result.ts'
import type { Result } from '../../report/reporter.ts'
import { addStory, NO_STORIES } from '../../report/sum.ts'
import { complain, complainOf, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { createProgress } from '../progress.ts'
import type { Baseline } from './baseline.ts'
import { checkAll } from './check-all.ts'
import { printWarningCount, toExitCode } from './exit-code.ts'
import { findInputs, type Inputs, keepChanged } from './inputs.ts'
import type { CheckOptions, CheckSettings } from './options.ts'
import { createProblemLog, type ProblemLog } from './problem-log.ts'
import { createPrinter, type Printer } from './reporters.ts'
import type { Run } from './targets.ts'
import { createTaskMaker } from './task.ts'
import { createWantedBaseline, openWantedBaseline, printBaselineChange } from './wanted-baseline.ts'

export async function runCheck(
  given: readonly string[],
  settings: CheckSettings,
  options: CheckOptions,
  io: Io,
): Promise<ExitCode> {
  const inputs = await findInputs(given, options, io)
  const loss = await findWantedLoss({ given, inputs, settings, options }, io)
  if (loss !== undefined) {
    complain(io, loss)
    return 2
  }
  complainOf(io, inputs.problems)
  for (const notice of inputs.notices) io.stderr.write(`${notice}\n`)
  const opened = await openWantedBaseline(options, io)
  if (opened?.ok === false) {
    complainOf(io, opened.problems)
    return 2
  }
  const baseline = opened?.value
  const wanted = options.writeBaseline ? [] : settings.wanted
  const shown = { isQuiet: options.quiet === true, scope: toScope(inputs, baseline) }
  const printers = await Promise.all(wanted.map((one) => createPrinter(one, shown, io)))
  const hasLines = wanted.some(({ format, file }) => format === 'line' && file === undefined)
  const log = createProblemLog(hasLines, io)
  const tasks = createTaskMaker(io, options, log.config)
  const progress = createProgress(io, inputs.files.length)
  const newBaseline = await createWantedBaseline(options, io)
  let sum = NO_STORIES
  for await (const one of checkAll({ files: inputs.files, tasks, settings, options, io })) {
    progress.step(sum.stories + sum.failed, one?.result.path ?? '')
    if (one === undefined) continue
    const result = isChecked(one.result) ? keep(one.result, one.storyPath, { inputs, baseline, io }) : one.result
    sum = addStory(sum, result)
    if (isChecked(result)) newBaseline?.story(one.storyPath, result)
    log.turn(one.configProblems)
    print(result, { printers, log, hide: progress.hide })
    if (io.stdout.isPending) await io.stdout.drained?.()
  }
  progress.end()
  log.end()
  const isBroken = inputs.problems.length > 0 || tasks.hasConfigErrors() || sum.failed > 0
  const written = newBaseline?.write() ?? 0
  const isPrinted = printers.map((printer) => printer.end(sum)).every(Boolean)
  const hasGrown = printBaselineChange(baseline, options, io)
  if (isBroken || !isPrinted || written === 2) return 2
  if (options.writeBaseline) return 0
  if (options.quiet) printWarningCount(sum, settings, io)
  return hasGrown && settings.failOn !== 'never' ? 1 : toExitCode(sum, settings)
}

/** Loaded only where something is to be written. */
async function findWantedLoss(run: Run, io: Io): Promise<string | undefined> {
  const { options, settings } = run
  const isWriting =
    options.cacheFile !== undefined || options.writeBaseline || settings.wanted.some(({ file }) => file !== undefined)
  return isWriting ? (await import('./targets.ts')).findLoss(run, io) : undefined
}

function toScope(inputs: Inputs, baseline: Baseline | undefined): string | undefined {
  const scope = [inputs.changed && 'on the changed lines', baseline && 'beyond the baseline'].filter(Boolean)
  return scope.length > 0 ? scope.join(' ') : undefined
}

interface Sieves {
  readonly inputs: Inputs
  readonly baseline: Baseline | undefined
  readonly io: Io
}

function keep(story: CheckedStory, storyPath: string, { inputs, baseline, io }: Sieves): CheckedStory {
  const allowed = baseline ? baseline.filter(storyPath, story) : story
  return inputs.changed ? keepChanged(allowed, storyPath, inputs.changed, io) : allowed
}

interface Outlets {
  readonly printers: readonly Printer[]
  readonly log: ProblemLog
  readonly hide: () => void
}

function print(result: Result, { printers, log, hide }: Outlets): void {
  if (!isChecked(result) || printers.some(({ isLive }) => isLive)) hide()
  if (!isChecked(result)) log.story(result)
  for (const printer of printers) printer.story(result)
}
