// The reports by name, each loaded when it is asked for, and where their text goes.

import { relative, resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { withErrorsOnly } from '../../check/result.ts'
import { createJsonReporter } from '../../report/json.ts'
import { createLineReporter } from '../../report/line.ts'
import { PLAIN } from '../../report/paint.ts'
import { type PrettyOptions, toPrettyStory, toSummary } from '../../report/pretty.ts'
import type { Reporter, Result } from '../../report/reporter.ts'
import type { Sum } from '../../report/sum.ts'
import { complainOf, toPaint, toWidth } from '../command.ts'
import { createScratch, type Scratch } from '../files/scratch.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'
import type { Format, Wanted } from './options.ts'

/** A report on its way to where it is wanted. */
export interface Printer {
  /** Whether it writes to standard output while stories are being checked. */
  readonly isLive: boolean
  story(result: Result): void
  /** False where its file could not be written. */
  end(sum: Sum): boolean
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
  const isLive = isForScreen && reporter.head === undefined
  if (isLive) {
    return { isLive, story: (result) => write(reporter.story(result), io), end: (sum) => write(reporter.end(sum), io) }
  }
  const scratch = createScratch(io)
  return {
    isLive,
    story: (result) => scratch.add(reporter.story(result)),
    end(sum) {
      const text = toWhole(reporter, sum, scratch)
      if (file === undefined) {
        for (const piece of text) write(piece, io)
        return true
      }
      const written = writeTextFile(resolve(io.cwd, file), text, io, file)
      if (!written.ok) complainOf(io, written.problems)
      return written.ok
    },
  }
}

function* toWhole({ head, end }: Reporter, sum: Sum, scratch: Scratch): Generator<string | Uint8Array> {
  yield head?.(sum) ?? ''
  yield* scratch.take()
  yield end(sum)
}

function write(text: string | Uint8Array, io: Io): true {
  if (text.length > 0) io.stdout.write(text)
  return true
}

const toQuiet = (reporter: Reporter, isQuiet: boolean): Reporter =>
  isQuiet ? { ...reporter, story: (result) => reporter.story(withErrorsOnly(result)) } : reporter

async function createReporter(format: Exclude<Format, 'pretty'>, io: Io): Promise<Reporter> {
  switch (format) {
    case 'line':
      return createLineReporter()
    case 'json':
      return createJsonReporter()
    case 'github':
      return (await import('../../report/github.ts')).createGithubReporter(toCheckoutPath(io))
    case 'sarif':
      return (await import('../../report/sarif.ts')).createSarifReporter(rules, VERSION, toCheckoutPath(io))
    case 'junit':
      return (await import('../../report/junit.ts')).createJunitReporter()
    case 'html':
      return (await import('../../report/html/index.ts')).createHtmlReporter()
  }
}

/** Shown story by story. When only errors are wanted, stories without any are passed over; the sum still counts all. */
async function createPrettyReporter(
  isForScreen: boolean,
  { isQuiet, scope }: PrinterOptions,
  io: Io,
): Promise<Reporter> {
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
