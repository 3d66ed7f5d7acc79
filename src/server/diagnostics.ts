// What a check says, as the diagnostics of an editor.

import { type Diagnostic, DiagnosticSeverity, type Range } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { CheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import { type Place, type Problem, toProblemText } from '../problem/index.ts'
import { toBlamed, toRange } from './ranges.ts'

const SOURCE = 'battledore'

/** The code of reasons why a story could not be checked. */
export const NOT_CHECKED = 'not-checked'

export const SEVERITIES = { error: DiagnosticSeverity.Error, warning: DiagnosticSeverity.Warning } as const

export const toDiagnostics = (document: TextDocument, { messages }: CheckedStory): Diagnostic[] =>
  messages.map((message) => toDiagnostic(document, message))

export function toDiagnostic(document: TextDocument, message: Message): Diagnostic {
  const isAddress = /^https?:/.test(message.url)
  return {
    range: toRange(document, toBlamed(message)),
    severity: SEVERITIES[message.severity],
    source: SOURCE,
    code: message.rule,
    ...(isAddress ? { codeDescription: { href: message.url } } : {}),
    message: message.note === undefined ? message.message : `${message.message}\n${message.note}`,
  }
}

/** A diagnostic on a whole line. */
export function toLineDiagnostic(
  document: TextDocument,
  line: number,
  message: string,
  severity: DiagnosticSeverity,
): Diagnostic {
  const start = document.offsetAt({ line, character: 0 })
  const text = document.getText({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } }).trimEnd()
  return {
    range: toRange(document, { start, end: start + text.length }),
    severity,
    source: SOURCE,
    code: NOT_CHECKED,
    message,
  }
}

/** A problem at its place, whose lines and columns count from 1; at the beginning of the file where it has none. */
export const toPlacedDiagnostic = (
  problem: Pick<Problem, 'severity' | 'place'>,
  code: string,
  message: string,
): Diagnostic => ({
  range: toPlaceRange(problem.place),
  severity: SEVERITIES[problem.severity],
  source: SOURCE,
  code,
  message,
})

/** For a file that need not be open. */
export const toProblemDiagnostic = (problem: Problem, code: string): Diagnostic =>
  toPlacedDiagnostic(problem, code, toProblemText(problem))

const BEGINNING = { line: 1, column: 1 }

function toPlaceRange(place: Place | undefined): Range {
  const toPosition = ({ line, column }: { readonly line: number; readonly column: number }) => ({
    line: line - 1,
    character: column - 1,
  })
  return { start: toPosition(place?.start ?? BEGINNING), end: toPosition(place?.end ?? BEGINNING) }
}
