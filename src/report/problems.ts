// Why stories could not be checked, as reports show it: each problem in its own file, and one of another file only once.

import type { UncheckedStory } from '../check/result.ts'
import { type Place, type Problem, toProblemKey, toProblemText } from '../problem/index.ts'
import { toPrintable } from './text.ts'

/** A problem with the file in which it is shown. */
export interface ShownProblem {
  readonly path: string
  /** Missing where it is about the file as a whole. */
  readonly place: Place | undefined
  readonly text: string
  readonly problem: Problem
}

export const toShownProblem = (problem: Problem, storyPath: string): ShownProblem => ({
  path: problem.path ?? storyPath,
  place: problem.place,
  text: toProblemText(problem),
  problem,
})

/** Whether a problem was not met before: the same mistake of a sequence, whichever story names the sequence. */
export function createOnce(): (problem: Problem) => boolean {
  const reported = new Set<string>()
  return (problem) => {
    const key = toProblemKey(problem)
    return !reported.has(key) && reported.add(key) !== undefined
  }
}

/** What is to be reported of a story: all that is wrong with it, and what is wrong with other files where that is new. */
export const toNewProblems = ({ path, problems }: UncheckedStory, isNew: (problem: Problem) => boolean) =>
  problems.filter((problem) => isNew(problem) || isOf(problem, path)).map((problem) => toShownProblem(problem, path))

/** Whether a problem is reported of this story itself, or of a file that it stands in alone. */
const isOf = (problem: Problem, storyPath: string): boolean => (problem.path ?? storyPath) === storyPath

const BEGINNING = { line: 1, column: 1 }

/** `mine.yaml:6:9-6:19: error: … [not-checked]`, at the very beginning of the file where there is no place. */
export function toProblemReportLine({ path, place, text, problem }: ShownProblem, id = 'not-checked'): string {
  const { start, end } = place ?? { start: BEGINNING, end: BEGINNING }
  const at = `${start.line}:${start.column}-${end.line}:${end.column}`
  return `${toPrintable(path)}:${at}: ${problem.severity}: ${toPrintable(text)} [${id}]\n`
}

/** As JSON forms carry a problem: lines and columns from 1, null for what there is not. */
export function toProblemFields({ code, severity, message, expected, note, path, place, setBy }: Problem) {
  return {
    code,
    severity,
    message,
    path: path ?? null,
    line: place?.start.line ?? null,
    column: place?.start.column ?? null,
    endLine: place?.end.line ?? null,
    endColumn: place?.end.column ?? null,
    expected,
    note: note ?? null,
    setBy: setBy?.origin ?? null,
  }
}
