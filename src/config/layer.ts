// Reads the values of our keys, each checked by the schema, into a layer. One bad value does not spoil the rest.

import * as v from 'valibot'
import { isSequencePath, joinPath, toFolder } from '../files/index.ts'
import { findNearest } from '../nearest.ts'
import { type Found, type Range, type Sourced, toExpected } from '../problem/index.ts'
import { findChoicesAt } from '../yaml/schema-at.ts'
import type { ReadContext } from './context.ts'
import { report, toRaw, toSourced } from './context.ts'
import { readRules } from './rules.ts'
import { settingEntries } from './schema.ts'
import type { Entry, Tree } from './tree.ts'
import { findNearestNode, toPlain } from './tree.ts'
import type { Layer } from './types.ts'

type Entries = ReadonlyMap<string, Entry>
type Schema = v.GenericSchema<unknown, unknown>

// Keys whose text must stay as written: `step: 1.10` is no number, `title: 1984` is no year.
const TEXTS = new Set(['sequence', 'step', 'title'])
const LISTS = new Set(['names', 'sight words', 'unfit words', 'fit words'])

/** The checked value of one key, or undefined where it is missing or wrong (and reported). */
export function readValue<S extends Schema>(
  entries: Entries,
  key: string,
  schema: S,
  context: ReadContext,
): Sourced<v.InferOutput<S>> | undefined {
  const entry = entries.get(key)
  if (!entry) return undefined
  const isText = TEXTS.has(key) && entry.value.kind === 'scalar' && typeof entry.value.value === 'number'
  const result = v.safeParse(schema, isText ? toRaw(entry.value, context) : toPlain(entry.value))
  if (result.success) return toSourced(result.output, entry.value, context)
  const issue = toInnermost(result.issues[0])
  const node = findNearestNode(entry.value, issue.path?.map((item) => item.key) ?? [])
  const given = toRaw(node, context).split('\n')[0] ?? ''
  report(context, node, toValueProblem(`\`${key}\` ${issue.message}`, schema, given))
  return undefined
}

/** In a list of texts, the item that is none, rather than the whole list. */
function toInnermost(issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> {
  const inner = issue.issues?.find((one) => one.path !== undefined)
  return inner ? toInnermost(inner) : issue
}

/** A value that its key does not take: what it must be, what it is, and the choice that is nearest to it. */
export function toValueProblem(rule: string, schema: Schema, given: string): Found {
  const shown = given.length > 40 ? `${given.slice(0, 40)}…` : given
  const expected = toExpected(findNearest(given, findChoicesAt(schema, [])))
  return { code: 'bad-value', message: `${rule}, not \`${shown}\``, expected }
}

/** A list with the place of each item. */
export function readList(
  entries: Entries,
  key: string,
  schema: v.GenericSchema<unknown, string[]>,
  context: ReadContext,
): readonly Sourced<string>[] {
  const whole = readValue(entries, key, schema, context)
  const node = entries.get(key)?.value
  if (!whole || !node) return []
  const places = findItemPlaces(node, context)
  const isEach = places.length === whole.value.length
  return whole.value.map((value, at) => toSourced(value, (isEach && places[at]) || node, context))
}

/** Where each item that is not empty stands: those of a list, or those of one line with commas. */
function findItemPlaces(node: Tree, context: ReadContext): readonly Range[] {
  if (node.kind === 'list')
    return node.items.filter(
      (item) => item.kind !== 'scalar' || typeof item.value !== 'string' || item.value.trim() !== '',
    )
  const written = toRaw(node, context)
  // With quotes around, the letters of the text may stand otherwise than they are read.
  if (node.kind !== 'scalar' || written !== node.value) return []
  return [...written.matchAll(/[^,\s](?:[^,]*[^,\s])?/g)].map(({ 0: item, index }) => {
    const start = node.start + index
    return { start, end: start + item.length }
  })
}

export function readLayer(entries: Entries, context: ReadContext): Layer {
  const layer: Record<string, unknown> = {}
  for (const [key, schema] of Object.entries(settingEntries)) {
    const entry = entries.get(key)
    if (!entry) continue
    if (key === 'rules') layer.rules = readRules(entry.value, context)
    else if (LISTS.has(key)) layer[toProperty(key)] = readList(entries, key, settingEntries.names, context)
    else {
      const value = readValue(entries, key, schema, context)
      if (value) layer[toProperty(key)] = key === 'sequence' ? withPath(value as Sourced<string>, context) : value
    }
  }
  // Each value has passed the schema of its key, and `Layer` names the outputs of those schemas.
  return layer as Layer
}

/** `sight words` → `sightWords` */
export function toProperty(key: string): string {
  return key.replace(/ (.)/g, (_, letter: string) => letter.toUpperCase())
}

/** A sequence file is meant from the folder of the file that names it. */
function withPath(name: Sourced<string>, { source, path }: ReadContext): Sourced<string> {
  const folder = toFolder(path ?? source.path)
  return isSequencePath(name.value) ? { ...name, value: joinPath(folder, name.value) } : name
}
