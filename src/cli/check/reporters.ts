// The reports by name, each loaded when it is asked for, and where their text goes.

import { relative, resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { withErrorsOnly } from '../../check/result.ts'
import { toJsonReport } from '../../report/json.ts'
import { createLineReporter } from '../../report/line.ts'
import { PLAIN } from '../../report/paint.ts'
import { type PrettyOptions, toPrettyStory, toSummary } from '../../report/pretty.ts'
import { isLive, type LiveReporter, type Reporter, type Result } from '../../report/reporter.ts'
import type { Sum } from '../../report/sum.ts'
import { complainOf, toPaint, toWidth } from '../command.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'
import type { Format, Wanted } from './options.ts'

/** A report on its way to where it is wanted. */
export interface Printer {
  /** Whether it writes to standard output while stories are being checked. */
  readonly isLive: boolean
  /** Whether it must be handed all stories at the end. */
  readonly isWhole: boolean
  story(result: Result): void
  /** False where its file could not be written. */
  end(sum: Sum, results: readonly Result[]): boolean
}

export interface PrinterOptions {
  readonly isQuiet: boolean
  /** What of all messages is shown; undefined where all are. */
  readonly scope: string | undefined
}

export async function createPrinter({ format, file }: Wanted, options: PrinterOptions, io: Io): Promise<Printer> {
  const isForScreen = file === undefined
  const reporter =
    format === 'pretty'
      ? await createPrettyReporter(isForScreen, options, io)
      : toQuiet(await createReporter(format, io), options.isQuiet)
  const live = isLive(reporter) ? reporter : undefined
  const toEnd = (sum: Sum, results: readonly Result[]): string =>
    isLive(reporter) ? reporter.end(sum) : reporter.end(results)
  if (file === undefined) {
    return {
      isLive: live !== undefined,
      isWhole: live === undefined,
      story: (result) => write(live?.story(result) ?? '', io),
      end(sum, results) {
        write(toEnd(sum, results), io)
        return true
      },
    }
  }
  let text = ''
  return {
    isLive: false,
    isWhole: live === undefined,
    story: (result) => {
      text += live?.story(result) ?? ''
    },
    end(sum, results) {
      const written = writeTextFile(resolve(io.cwd, file), text + toEnd(sum, results), io, file)
      if (!written.ok) complainOf(io, written.problems)
      return written.ok
    },
  }
}

function write(text: string, io: Io): void {
  if (text !== '') io.stdout.write(text)
}

function toQuiet(reporter: Reporter, isQuiet: boolean): Reporter {
  if (!isQuiet) return reporter
  return isLive(reporter)
    ? { ...reporter, story: (result) => reporter.story(withErrorsOnly(result)) }
    : { end: (results) => reporter.end(results.map(withErrorsOnly)) }
}

async function createReporter(format: Exclude<Format, 'pretty'>, io: Io): Promise<Reporter> {
  switch (format) {
    case 'line':
      return createLineReporter()
    case 'json':
      return { end: (results: readonly Result[]) => `${JSON.stringify(toJsonReport(results), null, 2)}\n` }
    case 'github':
      return (await import('../../report/github.ts')).createGithubReporter(toCheckoutPath(io))
    case 'sarif':
      return (await import('../../report/sarif.ts')).createSarifReporter(rules, VERSION, toCheckoutPath(io))
    case 'junit':
      return (await import('../../report/junit.ts')).junitReporter
    case 'html':
      return (await import('../../report/html/index.ts')).htmlReporter
  }
}

/** Shown story by story. When only errors are wanted, stories without any are passed over; the sum still counts all. */
async function createPrettyReporter(
  isForScreen: boolean,
  { isQuiet, scope }: PrinterOptions,
  io: Io,
): Promise<LiveReporter> {
  const place = isForScreen ? { width: toWidth(io), paint: await toPaint(io) } : { width: 80, paint: PLAIN }
  const options: PrettyOptions = { ...place, ...(scope !== undefined && { scope }) }
  const toShown = (result: Result): Result => (isQuiet ? withErrorsOnly(result) : result)
  return {
    story: (result) => toStoryText(toShown(result), isQuiet, options),
    end: (sum) => {
      const shown = isQuiet ? sum.failed + sum.errors : sum.failed + sum.stories
      return shown > 0 ? toSummary(sum, options) : ''
    },
  }
}

const toStoryText = (result: Result, isQuiet: boolean, options: PrettyOptions): string =>
  'problems' in result || (isQuiet && result.messages.length === 0) ? '' : `${toPrettyStory(result, options)}\n`

/** Paths from the top of the checkout, wherever in it the check runs. */
function toCheckoutPath({ cwd, env }: Io): (path: string) => string {
  const given = env['GITHUB_WORKSPACE']
  if (!given) return (path) => path
  const top = resolve(cwd, given)
  return (path) => {
    const below = relative(top, resolve(cwd, path)).replaceAll(sep, '/')
    return below.startsWith('../') ? path : below
  }
}
