// What the exit code of a check says.

import type { CheckedStory } from '../../check/result.ts'
import type { Severity } from '../../lint/types.ts'
import { toCount } from '../../report/text.ts'
import type { ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import type { CheckSettings } from './options.ts'

type Limits = Pick<CheckSettings, 'failOn' | 'maxWarnings'>

const count = (stories: readonly CheckedStory[], severity: Severity): number =>
  stories.reduce((sum, { messages }) => sum + messages.filter((one) => one.severity === severity).length, 0)

export function toExitCode(stories: readonly CheckedStory[], { failOn, maxWarnings }: Limits): ExitCode {
  const warnings = count(stories, 'warning')
  if (maxWarnings !== undefined && warnings > maxWarnings) return 1
  if (failOn === 'never') return 0
  return count(stories, 'error') > 0 || (failOn === 'warning' && warnings > 0) ? 1 : 0
}

/** One line where warnings alone make the check fail, for a report that does not show them. */
export function printWarningCount(stories: readonly CheckedStory[], { failOn, maxWarnings }: Limits, io: Io): void {
  const warnings = count(stories, 'warning')
  if (failOn !== 'never' && count(stories, 'error') > 0) return
  if (maxWarnings !== undefined && warnings > maxWarnings)
    io.stderr.write(`${toCount(warnings, 'warning')}, more than --max-warnings ${maxWarnings} allows.\n`)
  else if (failOn === 'warning' && warnings > 0)
    io.stderr.write(`${toCount(warnings, 'warning')}, and --fail-on warning allows none.\n`)
}
