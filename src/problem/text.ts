// A problem in words: the one place where message, origin, guess and advice are put together.

import type { Origin, Problem } from './types.ts'

/** ``no step `pnk-4` (set in --step). Did you mean `pink-4`?``: without a place, and with no full stop where nothing follows. */
export function toProblemText(problem: Problem): string {
  const { message, expected, note } = problem
  const [nearest] = expected
  const more = [
    ...(nearest === undefined ? [] : [`Did you mean \`${nearest}\`?`]),
    ...(note === undefined ? [] : [note]),
  ]
  return [`${message}${toOriginText(problem)}${more.length > 0 ? '.' : ''}`, ...more].join(' ')
}

/** What has a place is mended there, whoever named its file. */
const toOriginText = ({ setBy, place }: Problem): string =>
  setBy === undefined || place !== undefined ? '' : ` (${toOriginWords(setBy)})`

const toOriginWords = ({ origin }: Origin): string => (origin === 'default' ? 'the default' : `set in ${origin}`)

/** On one line of a terminal: `mine.yaml:6:9: error: …`, and a whole sentence where there is no place. */
export function toProblemLine(problem: Problem): string {
  const text = toProblemText(problem)
  const { path, place, severity } = problem
  if (path === undefined || place === undefined) return /[.?!]$/.test(text) ? text : `${text}.`
  return `${path}:${place.start.line}:${place.start.column}: ${severity}: ${text}`
}
