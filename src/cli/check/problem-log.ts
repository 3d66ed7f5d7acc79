// Tells what could not be checked, each mistake once: on standard error, or among the lines of the report for editors.

import type { UncheckedStory } from '../../check/result.ts'
import type { Problem } from '../../problem/index.ts'
import { createOnce, toProblemReportLine, toShownProblem } from '../../report/problems.ts'
import { complainOf } from '../command.ts'
import type { Io } from '../io.ts'

export interface ProblemLog {
  config(problem: Problem): void
  story(result: UncheckedStory): void
}

/** With `hasLines`, the report itself says why a story could not be checked, and an editor would misread a second line. */
export function createProblemLog(hasLines: boolean, io: Io): ProblemLog {
  const isNew = createOnce()
  return {
    config: (problem) => {
      if (hasLines) io.stdout.write(toProblemReportLine(toShownProblem(problem, ''), 'config'))
      else complainOf(io, [problem])
    },
    story({ problems }) {
      if (!hasLines) complainOf(io, problems.filter(isNew))
    },
  }
}
