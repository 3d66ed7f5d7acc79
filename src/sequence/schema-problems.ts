// Turns what the schema finds into problems a teacher can act on, each at its place and with the nearest valid form.

import type { BaseIssue } from 'valibot'
import { findNearest } from '../nearest.ts'
import { toKeysAt } from './schema.ts'
import type { Path, SequenceProblem, Source } from './source.ts'

type Issue = BaseIssue<unknown>

/** Whether the issue is a key that the form does not have; the rest of the file can still be read. */
export function isUnknownKey(issue: Issue): boolean {
  return issue.type === 'strict_object' && issue.expected === 'never'
}

/** The keys and places from the root of the file to the issue. */
export function toPath(issue: Issue): Path {
  return (issue.path ?? []).map((item) => (typeof item.key === 'number' ? item.key : String(item.key)))
}

/** @param keysAt the keys that may stand at a place of the file */
export function toSchemaProblem(
  issue: Issue,
  source: Source,
  keysAt: (path: Path) => readonly string[] = toKeysAt,
): SequenceProblem {
  const path = toPath(issue)
  const key = String(path.at(-1) ?? '')
  if (isUnknownKey(issue)) {
    const known = keysAt(path)
    const message = `Unknown key \`${key}\`. The keys here are ${known.join(', ')}`
    return source.problemAt(path, message, { atKey: true, suggestion: findNearest(key, known) })
  }
  const isMissing = issue.type === 'strict_object' && issue.received === 'undefined' && path.length > 0
  if (isMissing) return source.problemAt(path.slice(0, -1), `\`${key}:\` is missing here`)
  const options = issue.type === 'picklist' ? toOptions(issue.expected) : []
  const written = typeof issue.input === 'string' ? issue.input : ''
  const found = written === '' && typeof issue.input !== 'number' ? '' : `, not \`${issue.input}\``
  return source.problemAt(path, `${issue.message}${found}`, { suggestion: findNearest(written, options) })
}

function toOptions(expected: string | null): readonly string[] {
  return [...(expected ?? '').matchAll(/"([^"]+)"/g)].map((match) => match[1] ?? '')
}
