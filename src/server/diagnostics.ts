// What a check says, as the diagnostics of an editor.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { CheckedStory } from '../check/result.ts'
import type { Problem } from '../config/index.ts'
import type { Message } from '../lint/types.ts'
import { toBlamed, toRange } from './ranges.ts'

export const SOURCE = 'battledore'

/** The code of reasons why a story could not be checked. */
const NOT_CHECKED = 'not-checked'

const SEVERITIES = { error: DiagnosticSeverity.Error, warning: DiagnosticSeverity.Warning } as const

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

/** A mistake in settings, from lines and columns that count from 1. */
export const toProblemDiagnostic = (problem: Problem, code: string): Diagnostic => ({
  range: {
    start: { line: problem.line - 1, character: problem.column - 1 },
    end: { line: problem.endLine - 1, character: problem.endColumn - 1 },
  },
  severity: SEVERITIES[problem.severity],
  source: SOURCE,
  code,
  message: problem.message,
})
