// What the exit code of a check says.

import type { Sum } from '../../report/sum.ts'
import { toCount } from '../../report/text.ts'
import type { ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import type { CheckSettings } from './options.ts'

type Limits = Pick<CheckSettings, 'failOn' | 'maxWarnings'>

export function toExitCode({ errors, warnings }: Sum, { failOn, maxWarnings }: Limits): ExitCode {
  if (maxWarnings !== undefined && warnings > maxWarnings) return 1
  if (failOn === 'never') return 0
  return errors > 0 || (failOn === 'warning' && warnings > 0) ? 1 : 0
}

/** One line where warnings alone make the check fail, for a report that does not show them. */
export function printWarningCount({ errors, warnings }: Sum, { failOn, maxWarnings }: Limits, io: Io): void {
  if (failOn !== 'never' && errors > 0) return
  if (maxWarnings !== undefined && warnings > maxWarnings)
    io.stderr.write(`${toCount(warnings, 'warning')}, more than --max-warnings ${maxWarnings} allows.\n`)
  else if (failOn === 'warning' && warnings > 0)
    io.stderr.write(`${toCount(warnings, 'warning')}, and --fail-on warning allows none.\n`)
}
