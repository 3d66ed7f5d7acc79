// Why an open story could not be checked: each problem where it can be mended, in the story or in another file.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { UncheckedStory } from '../check/result.ts'
import { type Origin, type Place, type Problem, toProblemLine, toProblemText } from '../problem/index.ts'
import { NOT_CHECKED, SEVERITIES, toLineDiagnostic, toPlacedDiagnostic } from './diagnostics.ts'

export interface Reasons {
  readonly diagnostics: readonly Diagnostic[]
  /** What is to be mended in other files. */
  readonly elsewhere: readonly Problem[]
}

/** A text that nobody calls a story gets a quiet hint of each, not an error. */
export function toReasons(document: TextDocument, { path, problems }: UncheckedStory, isMeant: boolean): Reasons {
  const quiet = isMeant ? {} : { severity: DiagnosticSeverity.Hint }
  return {
    diagnostics: problems.map((problem) => ({ ...toReason(document, problem, path), ...quiet })),
    elsewhere: problems.filter((problem) => isElsewhere(problem, path)),
  }
}

const isElsewhere = ({ path, place }: Problem, storyPath: string): boolean =>
  path !== undefined && path !== storyPath && place !== undefined

/** What stands in another file is told here too: on the setting that names the file, where the story has it. */
function toReason(document: TextDocument, problem: Problem, storyPath: string): Diagnostic {
  const isHere = !isElsewhere(problem, storyPath)
  const place = isHere ? problem.place : findInStory(problem.setBy, storyPath)
  const message = isHere ? toSentence(toProblemText(problem)) : toProblemLine(problem)
  if (!place) return toLineDiagnostic(document, 0, message, SEVERITIES[problem.severity])
  return toPlacedDiagnostic({ ...problem, place: toFirstLine(place, document) }, NOT_CHECKED, message)
}

const findInStory = (setBy: Origin | undefined, storyPath: string): Place | undefined =>
  setBy?.path === storyPath ? setBy.at : undefined

/** A whole text that is marked says no more than its first line, and hides all else. */
function toFirstLine({ start, end }: Place, document: TextDocument): Place {
  if (end.line === start.line) return { start, end }
  const line =
    document
      .getText()
      .slice(start.offset, end.offset)
      .split(/[\r\n]/, 1)[0] ?? ''
  const { length } = line.trimEnd()
  return { start, end: { line: start.line, column: start.column + length, offset: start.offset + length } }
}

const toSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
