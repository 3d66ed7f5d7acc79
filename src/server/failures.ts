// Why an open story could not be checked: each reason where it can be mended, in the story or in a config.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { FRONT_MATTER } from '../check/check-story.ts'
import type { UncheckedStory } from '../check/result.ts'
import { type ConfigChain, type Problem, type Sourced, toProblemLine } from '../config/index.ts'
import { toProblem } from '../config/place.ts'
import { toLineDiagnostic, toProblemDiagnostic } from './diagnostics.ts'
import type { OpenSettings } from './open-settings.ts'
import { toRange } from './ranges.ts'

export interface Failures {
  readonly diagnostics: readonly Diagnostic[]
  /** What is to be mended in a config. */
  readonly inConfigs: readonly Problem[]
}

/** A text that nobody calls a story gets a quiet hint of each, not an error. */
export function toFailures(
  document: TextDocument,
  { path, failures }: UncheckedStory,
  { own, settings, chain }: OpenSettings,
  isMeant: boolean,
): Failures {
  const quiet = isMeant ? {} : { severity: DiagnosticSeverity.Hint }
  const diagnostics = own.problems.map((problem) => ({ ...toProblemDiagnostic(problem, FRONT_MATTER), ...quiet }))
  const inConfigs: Problem[] = []
  const told = new Set(own.problems.map(toProblemLine))
  for (const failure of failures) {
    if (told.has(failure)) continue
    const setting = [settings.step, settings.sequence].find(({ origin }) => failure.includes(`(set in ${origin})`))
    const message = failure.startsWith(`${path}: `) ? toSentence(failure.slice(path.length + 2)) : failure
    const inConfig = setting && findInConfig(setting, message, chain)
    if (inConfig) inConfigs.push(inConfig)
    const at = inConfig ? undefined : setting?.at
    diagnostics.push({
      ...(at
        ? toLineDiagnostic(document, 0, message, DiagnosticSeverity.Error)
        : toPlacedDiagnostic(document, path, message)),
      ...(at && { range: toRange(document, at) }),
      ...quiet,
    })
  }
  return { diagnostics, inConfigs }
}

/** On the line that the reason itself names, else on the first. */
function toPlacedDiagnostic(document: TextDocument, path: string, failure: string): Diagnostic {
  const place = failure.startsWith(`${path}:`) ? /^(\d+):(\d+): (.*)$/su.exec(failure.slice(path.length + 1)) : null
  const line = place ? Number(place[1]) - 1 : 0
  return toLineDiagnostic(document, line, place?.[3] ?? failure, DiagnosticSeverity.Error)
}

function findInConfig({ origin, at }: Sourced<unknown>, message: string, chain: ConfigChain): Problem | undefined {
  const sources = chain.folders.flatMap(({ files }) => files.map(({ source }) => source))
  return sources
    .map((source) => toProblem(source, at ?? { start: 0, end: 0 }, message))
    .find(({ path, line, column }) => origin === `${path}:${line}:${column}`)
}

const toSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
