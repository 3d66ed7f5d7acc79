// Reads a value by a schema, and turns what is wrong into problems a teacher can act on, each at its place.

import { type BaseIssue, type GenericSchema, type InferOutput, safeParse } from 'valibot'
import { findNearest } from '../nearest.ts'
import { type Problem, toExpected } from '../problem/index.ts'
import { findChoicesAt, findKeysAt } from '../yaml/schema-at.ts'
import type { Path, Source } from './source.ts'

type Issue = BaseIssue<unknown>

export interface Parsed<Value> {
  /** Undefined where more is wrong than a key that does not exist. */
  readonly value: Value | undefined
  readonly problems: readonly Problem[]
}

/**
 * Keys that do not exist are told and left out, so that the rest of the file is still checked. The schema names only the
 * first of each map, and does not look below it: so it is asked again until there are none.
 */
export function parseBy<Schema extends GenericSchema>(schema: Schema, source: Source): Parsed<InferOutput<Schema>> {
  const value = structuredClone(source.value)
  const problems: Problem[] = []
  for (;;) {
    const result = safeParse(schema, value)
    if (result.success) return { value: result.output, problems }
    const unknown = result.issues.filter(isUnknownKey)
    if (unknown.length === 0)
      return { value: undefined, problems: [...problems, ...result.issues.map((one) => toOther(one, schema, source))] }
    for (const issue of unknown) problems.push(...takeUnknownKeys(value, toPath(issue).slice(0, -1), schema, source))
  }
}

const isUnknownKey = (issue: Issue): boolean => issue.type === 'strict_object' && issue.expected === 'never'

/** The keys and places from the root of the file to the issue. */
const toPath = (issue: Issue): Path =>
  (issue.path ?? []).map((item) => (typeof item.key === 'number' ? item.key : String(item.key)))

/** Takes all keys that do not exist out of the map at this path. */
function takeUnknownKeys(value: unknown, path: Path, schema: GenericSchema, source: Source): readonly Problem[] {
  const known = findKeysAt(schema, path)
  const map = path.reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], value)
  if (Array.isArray(map)) {
    map.length = 0
    return [toListForKeys(known, path, source)]
  }
  const unknown = Object.keys(map as Record<string, unknown>).filter((key) => !known.includes(key))
  for (const key of unknown) delete (map as Record<string, unknown>)[key]
  return unknown.map((key) => toUnknownKey(key, known, path, source))
}

/** To the schema a list is a map with the keys 0, 1, 2. */
function toListForKeys(known: readonly string[], path: Path, source: Source): Problem {
  const key = path.at(-1)
  const message = `A list cannot stand ${typeof key === 'string' ? `under \`${key}:\`` : 'here'}`
  return source.problemAt(path, { code: 'bad-value', message, note: `The keys here are ${known.join(', ')}.` })
}

function toUnknownKey(key: string, known: readonly string[], path: Path, source: Source): Problem {
  const nearest = findNearest(key, known)
  return source.problemAt(
    [...path, key],
    {
      code: 'unknown-key',
      message: `Unknown key \`${key}\``,
      expected: toExpected(nearest),
      ...(nearest === undefined && { note: `The keys here are ${known.join(', ')}.` }),
    },
    { atKey: true },
  )
}

function toOther(issue: Issue, schema: GenericSchema, source: Source): Problem {
  const path = toPath(issue)
  if (issue.type === 'strict_object' && issue.received === 'undefined' && path.length > 0) {
    const message = `\`${path.at(-1)}:\` is missing here`
    return source.problemAt(path.slice(0, -1), { code: 'missing-key', message })
  }
  const written = typeof issue.input === 'string' ? issue.input : ''
  const found = written === '' && typeof issue.input !== 'number' ? '' : `, not \`${issue.input}\``
  const expected = toExpected(findNearest(written, findChoicesAt(schema, path)))
  return source.problemAt(path, { code: 'bad-value', message: `${issue.message}${found}`, expected })
}
