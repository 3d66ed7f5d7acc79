// From what a person writes to a query: every filter by its name, every mistake told in one line.

import { findNearest } from '../nearest.ts'
import type { Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Span, WordKind } from './filters.ts'
import type { WordQuery } from './find.ts'
import type { WordOrderName } from './order.ts'
import type { Pool } from './pool.ts'
import { findRime, toListReading } from './reading.ts'
import { findSpelling, type Spelling } from './spelling.ts'

/** All as written; lists with commas. */
export interface WrittenQuery {
  readonly vowel?: string
  readonly first?: string
  readonly last?: string
  readonly with?: string
  readonly pattern?: string
  readonly lettersPattern?: string
  readonly length?: string
  readonly syllables?: string
  readonly rhymesWith?: string
  readonly family?: string
  readonly kind?: string
  readonly picture?: boolean
  readonly object?: boolean
  readonly known?: boolean
  readonly base?: boolean
  readonly newAtStep?: boolean
  readonly order?: string
  readonly seed?: string
  readonly count?: string
}

export interface QueryTools {
  readonly sequence: Sequence
  readonly phonics: Phonics
  readonly pool: Pool
}

/** Thrown inside, so that each value is read in one line; never leaves this file. */
class Mistake extends Error {}

const fail = (message: string): never => {
  throw new Mistake(message)
}

const KINDS = ['naming', 'doing', 'describing', 'little'] as const satisfies readonly WordKind[]
const ORDERS = ['useful', 'alphabetical', 'shuffled'] as const satisfies readonly WordOrderName[]

/** @returns the query, or the first mistake in one line */
export function readQuery(written: WrittenQuery, tools: QueryTools): WordQuery | { readonly problem: string } {
  try {
    return toQuery(written, tools)
  } catch (error) {
    if (error instanceof Mistake) return { problem: error.message }
    throw error
  }
}

function toQuery(written: WrittenQuery, tools: QueryTools): WordQuery {
  const { picture, object, known, base, newAtStep } = written
  const spellings = (text: string): Spelling[] => splitList(text).map((one) => toSpelling(one, tools))
  return {
    ...read(written.vowel, spellings, 'vowel'),
    ...read(written.first, spellings, 'first'),
    ...read(written.last, spellings, 'last'),
    ...read(written.with, spellings, 'with'),
    ...read(written.pattern, (text) => toPattern(text, '--pattern'), 'pattern'),
    ...read(written.lettersPattern, (text) => toPattern(text, '--letters-pattern'), 'lettersPattern'),
    ...read(written.length, (text) => toSpan(text, '--length'), 'length'),
    ...read(written.syllables, (text) => toSpan(text, '--syllables'), 'syllables'),
    ...read(written.rhymesWith, (text) => toRhymeWord(text, tools), 'rhymesWith'),
    ...read(written.family, (text) => toFamily(text, tools), 'family'),
    ...read(written.kind, (text) => splitList(text).map((one) => toChoice(one, KINDS, '--kind')), 'kinds'),
    ...read(written.order, (text) => toChoice(text, ORDERS, '--order'), 'order'),
    ...read(written.seed, (text) => toNumber(text, '--seed', 0), 'seed'),
    ...read(written.count, toCount, 'count'),
    ...(picture ? { picture } : {}),
    ...(object ? { object } : {}),
    ...(known ? { known } : {}),
    ...(base ? { base } : {}),
    ...(newAtStep ? { newAtStep } : {}),
  }
}

function read<Value, Name extends keyof WordQuery>(
  text: string | undefined,
  to: (text: string) => Value,
  name: Name,
): { [Key in Name]?: Value } {
  return text === undefined ? {} : ({ [name]: to(text) } as { [Key in Name]: Value })
}

const splitList = (text: string): string[] =>
  text
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')

function toSpelling(text: string, { sequence, phonics }: QueryTools): Spelling {
  const found = findSpelling(text, sequence, phonics)
  return 'problem' in found ? fail(found.problem) : found.spelling
}

function toPattern(text: string, flag: string): string {
  const pattern = text.toUpperCase()
  return /^[CV]{1,20}$/.test(pattern)
    ? pattern
    : fail(`${flag} is made of C for a consonant and V for a vowel, such as CVC; this is \`${text}\`.`)
}

function toSpan(text: string, flag: string): Span {
  const [, from, to] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(text.trim()) ?? []
  if (from === undefined) return fail(`${flag} is a number such as 3, or two such as 3-5; this is \`${text}\`.`)
  return { from: Number(from), to: Number(to ?? from) }
}

function toNumber(text: string, flag: string, least: number): number {
  const number = Number(text)
  return /^\d{1,9}$/.test(text) && number >= least
    ? number
    : fail(`${flag} is a whole number from ${least}; this is \`${text}\`.`)
}

const toCount = (text: string): number => (text === 'all' ? Infinity : toNumber(text, '--count', 1))

function toChoice<const Choice extends string>(text: string, choices: readonly Choice[], flag: string): Choice {
  const found = choices.find((choice) => choice === text)
  if (found !== undefined) return found
  const nearest = findNearest(text, choices)
  return fail(
    `${flag} is ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}; this is \`${text}\`.${nearest ? ` Did you mean \`${nearest}\`?` : ''}`,
  )
}

function toRhymeWord(text: string, { phonics }: QueryTools) {
  const word = text.trim().toLowerCase()
  const reading = phonics.read(word).readings[0]
  return reading ? { word, reading: toListReading(reading) } : fail(`--rhymes-with needs a word; this is \`${text}\`.`)
}

/** `-at` and `at` are the letters, said as most readable words say them; `cat` is the family of that word. */
function toFamily(text: string, tools: QueryTools): { readonly letters: string; readonly sounds: string } {
  const word = text.trim().toLowerCase()
  const reading = word.startsWith('-') ? undefined : tools.phonics.read(word).readings[0]
  const own = reading && findRime(word, toListReading(reading))
  if (own) return own
  const letters = word.replace(/^-/, '')
  if (!/^[a-z]+$/.test(letters))
    return fail(`--family is an ending such as -at, or a word such as cat; this is \`${text}\`.`)
  return { letters, sounds: findCommonSounds(letters, tools.pool) }
}

function findCommonSounds(letters: string, pool: Pool): string {
  const counts = new Map<string, number>()
  for (let at = 0; at < pool.size; at++) {
    if (!pool.wordAt(at).endsWith(letters) || (pool.isCheap && !pool.isReadable(at))) continue
    const rime = findRime(pool.wordAt(at), pool.readingAt(at))
    if (rime?.letters === letters) counts.set(rime.sounds, (counts.get(rime.sounds) ?? 0) + 1)
  }
  return [...counts].sort((left, right) => right[1] - left[1])[0]?.[0] ?? ''
}
