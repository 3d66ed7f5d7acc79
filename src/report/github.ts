// Workflow annotations for GitHub Actions.
//
// GitHub shows ten annotations of a kind for one step and drops the others without a word. The others are printed as
// plain lines in the log, and a notice says how many there are.

import { type CheckedStory, isChecked } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Problem } from '../problem/index.ts'
import { createOnce, type ShownProblem, toNewProblems } from './problems.ts'
import type { Reporter, Result } from './reporter.ts'
import { toCount, toPrintable } from './text.ts'

/** "10 warning annotations and 10 error annotations per step": https://github.com/actions/toolkit/issues/734 */
export const SHOWN_PER_KIND = 10

type Kind = Message['severity']

interface Annotation {
  readonly kind: Kind
  readonly file: string
  readonly title: string
  readonly text: string
  /** From 1; missing for a file as a whole. */
  readonly place?: {
    readonly line: number
    readonly column: number
    readonly endLine: number
    readonly endColumn: number
  }
}

/** `toFile` gives the path from the top of the checkout, as GitHub wants it. What is shown on the lines stands first. */
export function createGithubReporter(toFile: (path: string) => string): Reporter {
  const isNew = createOnce()
  const kept: Annotation[] = []
  const room: Record<Kind, number> = { error: SHOWN_PER_KIND, warning: SHOWN_PER_KIND }
  let hidden = 0
  const toLine = (one: Annotation): string => {
    if (room[one.kind]-- > 0) {
      kept.push(one)
      return ''
    }
    hidden++
    return `${toPlain(one)}\n`
  }
  return {
    story: (result) => toAnnotations(result, toFile, isNew).map(toLine).join(''),
    head: () => {
      const group = hidden === 0 ? '' : `::group::${toCount(hidden, 'further message')}\n`
      return kept.map((one) => `${toCommand(one)}\n`).join('') + group
    },
    end: () => (hidden === 0 ? '' : `::endgroup::\n::notice title=battledore::${escapeData(toNotice(hidden))}\n`),
  }
}

const toNotice = (hidden: number): string =>
  `${toCount(hidden, 'further message')} ${hidden === 1 ? 'is' : 'are'} not shown on the lines: GitHub shows ${SHOWN_PER_KIND} errors and ${SHOWN_PER_KIND} warnings of a step. The log of this step lists all.`

function toAnnotations(
  result: Result,
  toFile: (path: string) => string,
  isNew: (problem: Problem) => boolean,
): Annotation[] {
  if (!isChecked(result)) return toNewProblems(result, isNew).map((shown) => toProblemAnnotation(shown, toFile))
  const file = toFile(result.path)
  return result.messages.map((message) => toAnnotation(message, file, result))
}

const toProblemAnnotation = (
  { path, place, text, problem }: ShownProblem,
  toFile: (path: string) => string,
): Annotation => ({
  kind: problem.severity,
  file: toFile(path),
  title: 'could not be checked',
  text,
  ...(place && {
    place: {
      line: place.start.line,
      column: place.start.column,
      endLine: place.end.line,
      endColumn: place.end.column,
    },
  }),
})

function toAnnotation(message: Message, file: string, { lines }: CheckedStory): Annotation {
  const start = lines.toPoint(message.start)
  const end = lines.toPoint(message.end)
  return {
    kind: message.severity,
    file,
    title: message.rule,
    text: message.note === undefined ? message.message : `${message.message}\n${message.note}`,
    place: { line: start.line, column: start.column, endLine: end.line, endColumn: end.column },
  }
}

function toCommand({ kind, file, title, text, place }: Annotation): string {
  const properties: Record<string, string | number> = { file }
  if (place) Object.assign(properties, { line: place.line, endLine: place.endLine }, toColumns(place))
  const list = Object.entries({ ...properties, title }).map(
    ([name, value]) => `${name}=${escapeProperty(String(value))}`,
  )
  return `::${kind} ${list.join(',')}::${escapeData(text)}`
}

/** GitHub takes columns only where an annotation stays on one line. */
const toColumns = ({ line, column, endLine, endColumn }: NonNullable<Annotation['place']>) =>
  line === endLine ? { col: column, endColumn } : {}

/** Begins with the kind, so that no path can be taken for a command. */
function toPlain({ kind, file, title, text, place }: Annotation): string {
  const at = place ? `:${place.line}:${place.column}` : ''
  return `${kind} ${toPrintable(file)}${at}: ${toPrintable(text.split('\n')[0] ?? '')} [${title}]`
}

/** As @actions/core escapes them. */
const escapeData = (text: string): string => text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A')
const escapeProperty = (text: string): string => escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C')
