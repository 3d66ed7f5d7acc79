// What the exit code of a check says.

import type { CheckedStory } from '../../check/result.ts'
import type { ExitCode } from '../command.ts'
import type { CheckSettings } from './options.ts'

export function toExitCode(
  stories: readonly CheckedStory[],
  { failOn, maxWarnings }: Pick<CheckSettings, 'failOn' | 'maxWarnings'>,
): ExitCode {
  const count = (severity: string): number =>
    stories.reduce((sum, { messages }) => sum + messages.filter((one) => one.severity === severity).length, 0)
  if (maxWarnings !== undefined && count('warning') > maxWarnings) return 1
  if (failOn === 'never') return 0
  return count('error') > 0 || (failOn === 'warning' && count('warning') > 0) ? 1 : 0
}
