// Tells what could not be checked, each mistake once: on standard error, or among the lines of the report for editors.

import type { UncheckedStory } from '../../check/result.ts'
import type { Problem } from '../../problem/index.ts'
import { createOnce, toProblemReportLine, toShownProblem } from '../../report/problems.ts'
import { complainOf } from '../command.ts'
import type { Io } from '../io.ts'

export interface ProblemLog {
  /** Told when a config file is read, which may be many stories before its turn: how many hangs on the workers. */
  config(problem: Problem): void
  /** To be called before a story is reported, with what is wrong with its config files. */
  turn(problems: readonly Problem[]): void
  story(result: UncheckedStory): void
  end(): void
}

/** With `hasLines`, the report itself says why a story could not be checked, and an editor would misread a second line. */
export function createProblemLog(hasLines: boolean, io: Io): ProblemLog {
  const isNew = createOnce()
  const waiting = new Set<Problem>()
  const print = (problems: Iterable<Problem>): void => {
    for (const problem of problems) {
      if (!waiting.delete(problem)) continue
      if (hasLines) io.stdout.write(toProblemReportLine(toShownProblem(problem, ''), 'config'))
      else complainOf(io, [problem])
    }
  }
  return {
    config: (problem) => void waiting.add(problem),
    turn: print,
    story({ problems }) {
      if (!hasLines) complainOf(io, problems.filter(isNew))
    },
    end: () => print([...waiting]),
  }
}
