// Single values of a query as a person writes them: numbers, choices, patterns; each mistake in one line.

import { findNearest } from '../nearest.ts'
import type { Span } from './filters.ts'

/** Thrown inside, so that each value is read in one line; never leaves `readQuery`. */
export class Mistake extends Error {}

export const fail = (message: string): never => {
  throw new Mistake(message)
}

export const splitList = (text: string): string[] =>
  text
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')

/** Any letter is near any other, so of a single one only what begins with it is told. */
export function toHint(text: string, valid: readonly string[]): string {
  const nearest = text.length > 1 ? findLikeliest(text, valid) : valid.find((one) => one.startsWith(text.toLowerCase()))
  return nearest === undefined ? '' : ` Did you mean \`${nearest}\`?`
}

/** Of those that are equally near: the same letters (`sh` for `hs`), or at least the same first one (`rabbit` for `rabit`). */
export function findLikeliest(text: string, valid: readonly string[]): string | undefined {
  const inOrder = [...text].sort().join('')
  const rank = (one: string): number => ([...one].sort().join('') === inOrder ? 0 : one[0] === text[0] ? 1 : 2)
  const groups: [string[], string[], string[]] = [[], [], []]
  for (const one of valid) groups[rank(one)]?.push(one)
  return findNearest(text, groups.flat())
}

export function toPattern(text: string, flag: string): string {
  const pattern = text.toUpperCase()
  return /^[CV]{1,20}$/.test(pattern)
    ? pattern
    : fail(`${flag} is made of C for a consonant and V for a vowel, such as CVC; this is \`${text}\`.`)
}

export function toSpan(text: string, flag: string): Span {
  const [, from, to] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(text.trim()) ?? []
  if (from === undefined) return fail(`${flag} is a number such as 3, or two such as 3-5; this is \`${text}\`.`)
  const span = { from: Number(from), to: Number(to ?? from) }
  if (span.from < 1) return fail(`${flag} starts at 1; this is \`${text}\`.`)
  if (span.to < span.from)
    return fail(`${flag} goes from the smaller number to the larger. Did you mean \`${span.to}-${span.from}\`?`)
  return span
}

export function toNumber(text: string, flag: string, least: number): number {
  const number = Number(text)
  return /^\d{1,9}$/.test(text) && number >= least
    ? number
    : fail(`${flag} is a whole number from ${least}; this is \`${text}\`.`)
}

export const toCount = (text: string): number => (text === 'all' ? Infinity : toNumber(text, '--count', 1))

export function toChoice<const Choice extends string>(text: string, choices: readonly Choice[], flag: string): Choice {
  const found = choices.find((choice) => choice === text)
  if (found !== undefined) return found
  const nearest = findNearest(text, choices)
  return fail(
    `${flag} is ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}; this is \`${text}\`.${nearest ? ` Did you mean \`${nearest}\`?` : ''}`,
  )
}
