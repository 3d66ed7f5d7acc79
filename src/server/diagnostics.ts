// What a check says, as the diagnostics of an editor.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { CheckedStory, UncheckedStory } from '../check/result.ts'
import type { Problem } from '../config/index.ts'
import type { Message } from '../lint/types.ts'
import { toBlamed, toRange } from './ranges.ts'

export const SOURCE = 'battledore'

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

/** Why a story could not be checked, at the place that the reason names, else at its first line. */
export function toFailures(
  document: TextDocument,
  { path, failures }: UncheckedStory,
  severity: DiagnosticSeverity,
): Diagnostic[] {
  return failures.map((failure) => {
    const place = failure.startsWith(`${path}:`) ? /^(\d+):(\d+): (.*)$/su.exec(failure.slice(path.length + 1)) : null
    const line = place ? Number(place[1]) - 1 : 0
    return toLineDiagnostic(document, line, place?.[3] ?? failure, severity)
  })
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
    code: 'not-checked',
    message,
  }
}

/** A mistake in a config, from lines and columns that count from 1. */
export const toConfigDiagnostic = (problem: Problem): Diagnostic => ({
  range: {
    start: { line: problem.line - 1, character: problem.column - 1 },
    end: { line: problem.endLine - 1, character: problem.endColumn - 1 },
  },
  severity: SEVERITIES[problem.severity],
  source: SOURCE,
  code: 'config',
  message: problem.message,
})
