// The baseline of a run: opened, told of, written, where the options ask for it.

import { isChecked } from '../../check/result.ts'
import type { Result } from '../../problem/index.ts'
import { toCount } from '../../report/text.ts'
import { complainOf, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import type { Baseline } from './baseline.ts'
import type { Found } from './check-all.ts'
import { type CheckOptions, toBaselineFile } from './options.ts'

export async function openWantedBaseline(options: CheckOptions, io: Io): Promise<Result<Baseline> | undefined> {
  if (options.baseline === undefined || options.writeBaseline) return undefined
  const { openBaseline } = await import('./baseline.ts')
  return openBaseline(options.baseline, io)
}

export async function writeWantedBaseline(found: readonly Found[], options: CheckOptions, io: Io): Promise<ExitCode> {
  const { writeBaseline } = await import('./baseline.ts')
  const file = toBaselineFile(options)
  const stories = found.flatMap(({ storyPath, result }) => (isChecked(result) ? [[storyPath, result] as const] : []))
  const written = writeBaseline(file, stories, io)
  if (!written.ok) {
    complainOf(io, written.problems)
    return 2
  }
  const messages = stories.reduce((sum, [, story]) => sum + story.messages.length, 0)
  io.stderr.write(
    `${file} now allows ${toCount(messages, 'message')} of ${toCount(stories.length, 'story', 'stories')}.\n`,
  )
  return 0
}

/** Whether there is more than the baseline allows. */
export function printBaselineChange(baseline: Baseline | undefined, options: CheckOptions, io: Io): boolean {
  if (!baseline) return false
  const file = toBaselineFile(options)
  const { fewer, more } = baseline.change()
  if (more > 0) io.stderr.write(`${toCount(more, 'message')} more than ${file} allows.\n`)
  if (fewer > 0)
    io.stderr.write(`${toCount(fewer, 'message')} fewer than ${file} allows: --write-baseline makes it smaller.\n`)
  return more > 0
}
