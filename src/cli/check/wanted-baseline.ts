// The baseline of a run: opened, told of, written, where the options ask for it.

import type { CheckedStory } from '../../check/result.ts'
import type { Result } from '../../problem/index.ts'
import { toCount } from '../../report/text.ts'
import { complainOf, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import type { Baseline } from './baseline.ts'
import { type CheckOptions, toBaselineFile } from './options.ts'

export async function openWantedBaseline(options: CheckOptions, io: Io): Promise<Result<Baseline> | undefined> {
  if (options.baseline === undefined || options.writeBaseline) return undefined
  const { openBaseline } = await import('./baseline.ts')
  return openBaseline(options.baseline, io)
}

interface NewBaseline {
  story(storyPath: string, story: CheckedStory): void
  write(): ExitCode
}

/** Undefined where none is to be written. */
export async function createWantedBaseline(options: CheckOptions, io: Io): Promise<NewBaseline | undefined> {
  if (!options.writeBaseline) return undefined
  const { createNewBaseline } = await import('./baseline.ts')
  const file = toBaselineFile(options)
  const baseline = createNewBaseline(file, io)
  let [stories, messages] = [0, 0]
  return {
    story(storyPath, story) {
      stories++
      messages += story.messages.length
      baseline.story(storyPath, story)
    },
    write() {
      const written = baseline.write()
      if (!written.ok) {
        complainOf(io, written.problems)
        return 2
      }
      const allowed = `${toCount(messages, 'message')} of ${toCount(stories, 'story', 'stories')}`
      io.stderr.write(`${file} now allows ${allowed}.\n`)
      return 0
    },
  }
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
