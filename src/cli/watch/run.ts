// `battledore check --watch`: checks everything once, then what changes, with a begin and an end line for each story.
//
// An editor clears its marks of the one story that a begin line names, and sets those it reads before the end line.

import type { Layer } from '../../config/index.ts'
import { createChecker } from '../checker.ts'
import { complain, complainOf, type ExitCode } from '../command.ts'
import { findStories } from '../files/find.ts'
import { toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'
import { watchFiles } from './files.ts'
import { createQueue } from './queue.ts'
import { createWatchReport } from './report.ts'
import { createShelf, type Shelf } from './shelf.ts'

export interface WatchOptions {
  /** The reports asked for. */
  readonly format: readonly { readonly format: string; readonly file?: string }[]
  readonly config?: string | undefined
  readonly quiet?: boolean
  readonly suggest?: boolean
}

/** What only makes sense for a run that ends. */
const NOT_WATCHED = ['baseline', 'writeBaseline', 'cache', 'cacheFile', 'changedSince', 'staged'] as const

/**
 * Milliseconds until files are looked at once more: watching leaves out a save that follows another at once, and a
 * config that comes just before it is watched.
 */
const LOOK_AGAIN = 80

/** Ends when `signal` says so; else with the process. */
export async function watch(
  given: readonly string[],
  options: WatchOptions & Partial<Record<(typeof NOT_WATCHED)[number], unknown>>,
  flags: Layer,
  io: Io,
  signal?: AbortSignal,
): Promise<ExitCode> {
  const format = options.format[0]?.format ?? 'pretty'
  const unfit = NOT_WATCHED.find((name) => options[name] !== undefined)
  if (given.includes('-')) return refuse('--watch needs files or folders: standard input cannot be watched.', io)
  if (unfit !== undefined) return refuse(`--${toFlag(unfit)} does not go with --watch.`, io)
  if (format !== 'pretty' && format !== 'line') {
    return refuse(`--watch prints --format pretty or line, not ${format}.`, io)
  }
  if (options.format.length > 1 || options.format[0]?.file !== undefined) {
    return refuse('--watch prints one report, and not to a file.', io)
  }
  const found = await findStories(given, io)
  for (const notice of found.notices) io.stderr.write(`${notice}\n`)
  for (const problem of found.problems) complainOf(io, [problem])
  if (found.problems.length > 0) return 2
  const report = await createWatchReport(format, io)
  const suggest = options.suggest !== false && format === 'pretty'
  const checker = createChecker(io, { flags, config: options.config, suggest })
  return follow(given, createShelf(given, checker, report, options.quiet === true, io), io, signal)
}

const toFlag = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

function refuse(message: string, io: Io): ExitCode {
  complain(io, message)
  return 2
}

async function follow(
  given: readonly string[],
  shelf: Shelf,
  io: Io,
  signal: AbortSignal | undefined,
): Promise<ExitCode> {
  let settle: (code: ExitCode) => void = () => undefined
  const ended = new Promise<ExitCode>((end) => {
    settle = end
  })
  signal?.addEventListener('abort', () => settle(0), { once: true })
  const queue = createQueue(async (changed) => {
    const checked = await shelf.update(changed)
    files.add(shelf.sources())
    // The timer must not keep a process alive that has nothing else to do.
    setTimeout(() => queue.add(shelf.findChanged(checked)), LOOK_AGAIN).unref()
  })
  const onError = (error: unknown): void => {
    complain(io, `Watching has stopped: ${error instanceof Error ? error.message : String(error)}`)
    settle(2)
  }
  const files = await watchFiles(given, io, (path) => queue.add([toSlashes(path)]), onError)
  queue.add([toSlashes(io.cwd)])
  const code = await ended
  await files.close()
  await queue.idle()
  return code
}
